/** The rulebook as a page shows it: every rule in its room, with what a coach may set. */
import type { Rule } from './reason.js';

export type RuleRoom =
  | 'screening'
  | 'versions'
  | 'rows'
  | 'sessions'
  | 'walk'
  | 'ladder'
  | 'history'
  | 'audit'
  | 'review';

/** Both are allowed; in the rule's own unit. */
export interface RuleBounds {
  readonly least: number;
  readonly most: number;
}

export interface RulebookEntry {
  /** With the coach's own value laid over it, where there is one. */
  readonly rule: Rule;
  /** `null` for a rule that stands as it is. */
  readonly bounds: RuleBounds | null;
}

export interface RulebookRoom {
  readonly room: RuleRoom;
  readonly entries: readonly RulebookEntry[];
}
