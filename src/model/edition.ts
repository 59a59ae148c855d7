/** One issued, numbered, frozen version of a booklet: a fact, not a cache. */
import type { Booklet } from './booklet.js';
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
}

/** What stands in `editions/<n>/`: the record and the words frozen with it. */
export interface FrozenEdition {
  readonly edition: Edition;
  readonly booklet: Booklet;
}
