/** What the walk of one ladder yields: one step an occurrence, in order, and what is worth telling the coach. */
import type { Reason } from '../../model/reason.js';

export type RungRule = 'start' | 'stay' | 'up' | 'gate' | 'easy' | 'easy-down';

export interface LadderStep {
  readonly week: number;
  readonly easy: boolean;
  /** Index into the ladder's rungs. */
  readonly rung: number;
  readonly sets: number;
  readonly rule: RungRule;
  /** A new stage that must first be earned; `weeks` is empty where it was earned before this block. */
  readonly gate?: { readonly needs: { readonly rung: number; readonly weeks: readonly number[] } };
  /** On the gate's own step and every later one: what to do if the gate did not open. */
  readonly otherwise?: { readonly rung: number; readonly sets: number };
  /** The next rung and the next stage, with the rule that refuses it; absent `refusedBy` is open. */
  readonly considered: readonly { readonly rung: number; readonly refusedBy?: string }[];
  /** Occurrences that count at this rung, this one included; never more than are needed. */
  readonly earned: number;
  readonly reasons: readonly Reason[];
}

export interface LadderFinding {
  readonly rule: string;
  readonly weeks: readonly number[];
  readonly reason: Reason;
}

export interface LadderResult {
  readonly steps: readonly LadderStep[];
  readonly findings: readonly LadderFinding[];
}
