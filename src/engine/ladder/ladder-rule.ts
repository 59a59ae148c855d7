/** The kinds of rule the walk of rungs is made of. Every rule has a row in the rulebook and may be taken out by its id. */
import type { LadderInput, LadderOccurrence } from '../../model/ladder.js';
import type { ReasonInput, Rule } from '../../model/reason.js';
import type { LadderFinding, LadderStep } from './ladder-step.js';

/** Where the walk stands before an occurrence. */
export interface AtRung {
  readonly input: LadderInput;
  readonly occurrence: LadderOccurrence;
  readonly rung: number;
  /** Occurrences that count at this rung. */
  readonly earned: number;
  /** The weeks of those occurrences, in order; 0 for one before the block. */
  readonly weeks: readonly number[];
  readonly gateUsed: boolean;
}

/** Refuses a higher rung. */
export interface LadderGuard {
  readonly kind: 'guard';
  readonly row: Rule;
  readonly permits: (at: AtRung, next: number) => boolean;
  /** The figures with which it refuses. */
  readonly numbers: (at: AtRung, next: number) => readonly ReasonInput[];
}

/** A value or a habit that the walk consults. */
export interface LadderCustom {
  readonly kind: 'custom';
  readonly row: Rule;
}

/** Something the coach is told about a whole ladder; `null` where there is nothing to tell. */
export interface LadderTelling {
  readonly kind: 'telling';
  readonly row: Rule;
  readonly tell: (input: LadderInput, steps: readonly LadderStep[]) => LadderFinding | null;
}

export type RuleOfLadder = LadderGuard | LadderCustom | LadderTelling;

/** Whether two rungs are of different stages. */
export const isNewStage = ({ rungs }: LadderInput, from: number, to: number): boolean =>
  rungs[from]?.stage !== rungs[to]?.stage;
