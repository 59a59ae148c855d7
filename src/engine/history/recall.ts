/** What was done and seen of one exercise, as the rows that ask for it read it. Types only. */
import type { Client } from '../../model/client.js';
import type { Day } from '../../model/day.js';
import type { Exercise } from '../../model/exercise.js';
import type { History } from '../../model/history.js';
import type { ExerciseId, Side } from '../../model/identity.js';
import type { Rung } from '../../model/ladder.js';
import type { PainReport } from '../../model/log.js';
import type { Finding } from '../../model/plan.js';
import type { Problem } from '../../model/problem.js';
import type { TempoStep } from '../../model/programme.js';
import type { Grams, Tenths } from '../../model/quantity.js';
import type { Reason } from '../../model/reason.js';
import type { Rulebook } from '../rulebook.js';

/** Where work ended last: load and tempo of the last sets of work that were done in this exercise. */
export interface LastWork {
  readonly day: Day;
  /** As the exercise counts it; 0 for the body alone. */
  readonly grams: Grams;
  readonly tempo: TempoStep;
  /** `tops`, or 2 where more was left than asked in two running. */
  readonly earned: 0 | 1 | 2;
  /** Occurrences in a row at the top of `range` with the asked reserve, as the walk counts them: later ones add to these. */
  readonly tops: 0 | 1 | 2;
  readonly range: { readonly min: number; readonly max: number };
  /** Greatest reps × resisted load of one set; `null` where nothing is counted. */
  readonly greatest: number | null;
  /** Fewest reps of its sets of work. */
  readonly reps: number;
  /** Loads to go down from it, as far as there are any. */
  readonly lighter: number;
  /** The work fell short or was made easier: nothing is earned, whatever else says so. */
  readonly short: boolean;
}

/** A load that was tried and done as asked. */
export interface TrialDone {
  /** As the exercise counts it; 0 for the body alone. */
  readonly grams: Grams;
  /** As asked the last time. */
  readonly reps: number;
  /** In how many weeks running, since one was not done as asked. */
  readonly weeks: number;
  /** So often that it need not be earned otherwise. */
  readonly opened: boolean;
  /** Once it was not done as asked, or what is lighter fell short. */
  readonly failed: boolean;
}

/** Where a row on a ladder ended. */
export interface LastRung {
  readonly day: Day;
  /** As it was planned, with the dose as done where that was less and can be counted. */
  readonly rung: Rung;
  /** Occurrences in a row at this rung, done as asked. */
  readonly earned: 0 | 1 | 2;
  /** Loads to go down from it, as far as there are any. */
  readonly lighter: number;
  /** Rungs to go down from it, as far as there are any in its stage. */
  readonly lower: number;
}

/** Pain in an exercise, for which it is left out until the coach has cleared it. */
export interface Left {
  readonly from: Day;
  readonly where: PainReport['where'];
  readonly side: Side | 'both';
}

/** Pain, for which it begins lighter once: than it was done up to that day. */
export interface Sore {
  /** When it was said; of what has been cleared, when it was. */
  readonly day: Day;
  /** Lighter than this, which hurt, whatever was done since; `null` where that is not known, or past. */
  readonly under: Grams | null;
  /** Loads. */
  readonly lighter: number;
}

export interface Recall {
  readonly last: LastWork | null;
  /** Where each row ended that ended in this exercise, by `session/row`. */
  readonly lastIn: ReadonlyMap<string, LastWork>;
  /** The same of rows on a ladder. */
  readonly rungIn: ReadonlyMap<string, LastRung>;
  /** Loads of this exercise that were tried, lightest first. */
  readonly trials: readonly TrialDone[];
  /** Not done at all: the exercise is left out. */
  readonly leave: Left | null;
  /** Nothing is made harder up to and on this day, and no more reps than `maxReps`. */
  readonly hold: { readonly until: Day; readonly why: string; readonly maxReps: number | null } | null;
  /** Reps in reserve not gone below up to and on this day. */
  readonly floor: { readonly until: Day; readonly reserve: Tenths; readonly rule: string } | null;
  /** Begun with this tempo at least as slow. */
  readonly tempo: TempoStep | null;
  readonly sore: Sore | null;
  /** Loads down from where the row would begin, as far as there are any. */
  readonly lighter: number;
  /** Earned at least, whatever was marked. */
  readonly earned: 0 | 1 | 2;
  /** What is known is a weak estimate. */
  readonly weak: boolean;
  /** Goes first, and the other does what it can. */
  readonly side: Side | null;
  /** Why, to coach and client; each rests on a rule of the rulebook. */
  readonly reasons: readonly Reason[];
}

export const NO_RECALL: Recall = {
  last: null,
  lastIn: new Map(),
  rungIn: new Map(),
  trials: [],
  leave: null,
  hold: null,
  floor: null,
  tempo: null,
  sore: null,
  lighter: 0,
  earned: 0,
  weak: false,
  side: null,
  reasons: [],
};

/** By id of the exercise as the library has it now. */
export type Recalls = ReadonlyMap<ExerciseId, Recall>;

export interface Remembering {
  readonly client: Client;
  readonly history: History;
  readonly exercises: ReadonlyMap<string, Exercise>;
  readonly rules: Rulebook;
  readonly today: Day;
}

export interface Remembered {
  /** The client with what follows from marks and observations laid over their own facts. */
  readonly client: Client;
  readonly recalls: Recalls;
  readonly findings: readonly Finding[];
  readonly problems: readonly Problem[];
}
