/** What the coach reads of a plan and its changes: English alone, the coach's language. No part of it reaches a client. */
import type { RowChangeKind } from '../model/change.js';
import type { ReasonWords } from './reason-words.js';
import type { WhyWords } from './why-words.js';

/** The table of everything a new edition changes. */
export interface ChangeTableWords {
  /** What of a row is otherwise, in the coach's table. */
  readonly kinds: Readonly<Record<RowChangeKind, string>>;
  /** The work asked for, with what else of it is otherwise. */
  readonly withRest: (work: string, rest: string) => string;
  readonly withReserve: (work: string, reserve: string) => string;
  readonly notThere: string;
  /** Of the block as a whole. */
  readonly whole: Readonly<Record<'block' | 'programme' | 'dates' | 'sessions' | 'stops', string>>;
  /** A day or a thing there is none of. */
  readonly noDay: string;
  readonly blockNumber: (block: number) => string;
}

export interface CoachWords {
  readonly reasons: ReasonWords;
  readonly why: WhyWords;
  readonly changes: ChangeTableWords;
}
