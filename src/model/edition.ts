/** One issued, numbered, frozen version of a booklet: a fact, not a cache. */
import type { Booklet } from './booklet.js';
import type { Change } from './change.js';
import type { IsoDate } from './day.js';
import type { BookletId } from './identity.js';
import type { Plan } from './plan.js';

export interface Edition {
  readonly schema: 1;
  readonly bookletId: BookletId;
  /** 1 is the first. */
  readonly n: number;
  readonly issued: IsoDate;
  /** First day it holds for. */
  readonly from: IsoDate;
  /** The client's block it plans, from 1: the same in every edition of a block. */
  readonly block: number;
  /** The edition it takes the place of; absent for the first. */
  readonly supersedes?: number;
  /** SHA-256 over plan and words, hexadecimal. */
  readonly contentHash: string;
  readonly engineVersion: string;
  readonly rulesHash: string;
  readonly plan: Plan;
  readonly wordsHash: string;
  /** What is otherwise than in the edition it takes the place of; absent in the first, and in those of before it was kept. */
  readonly changes?: readonly Change[];
}

/** What stands in `editions/<n>/withdrawn.json`, beside the edition, which stays as it is. */
export interface Withdrawal {
  readonly schema: 1;
  readonly date: IsoDate;
  /** For the coach alone. */
  readonly why: string;
}

/** `ended`: its last day is over, or the next block is issued. */
export type EditionStanding = 'stands' | 'ended' | 'withdrawn';

/** What stands in `editions/<n>/`: the record and the words frozen with it. */
export interface FrozenEdition {
  readonly edition: Edition;
  readonly booklet: Booklet;
}
