/**
 * What is otherwise in one plan than in the one before it: data, made once when an edition is issued and frozen with
 * it, so that every drawing of the edition tells the same. `words` makes the sentences.
 */
import type { IsoDate } from './day.js';
import type { ExerciseId, ProgrammeId, RowId, SessionId } from './identity.js';
import type { Group, PlanSet } from './plan.js';
import type { TempoStep } from './programme.js';
import type { Seconds, Tenths } from './quantity.js';
import type { Reason } from './reason.js';

/** Equal sets together, in the order done. */
export type ChangedSets = Pick<PlanSet, 'kind' | 'side' | 'reps' | 'seconds' | 'metres' | 'steps' | 'then' | 'load'> & {
  readonly count: number;
};

/** One row in one session, as one of the two plans has it. */
export interface ChangedWork {
  readonly exercise: ExerciseId;
  /** Done only in this way of its own: what it is called. */
  readonly done?: string;
  readonly sets: readonly ChangedSets[];
  readonly tempo: TempoStep;
  readonly restSeconds: Seconds;
  /** Asked for; `null` where none is counted. */
  readonly reserve: Tenths | null;
}

export interface ChangedPlace {
  /** 1-based place in the block's queue, in the new plan; of what is left out, in the old one. */
  readonly occurrence: number;
  readonly week: number;
  readonly date: IsoDate;
  /** `null` where the row did not stand there. */
  readonly before: ChangedWork | null;
  /** `null` where the row stands there no more. */
  readonly after: ChangedWork | null;
}

export type RowChangeKind =
  | 'added'
  | 'removed'
  | 'version'
  | 'load'
  | 'amount'
  | 'sets'
  | 'effort'
  | 'tempo'
  | 'rest'
  /** What has to be earned, tried or found out first. */
  | 'conditions';

/** To less work, to more, or to neither. */
export type ChangeWay = 'down' | 'up' | 'other';

/** One thing about one row, from the first of its places on. */
export interface RowChange {
  readonly what: RowChangeKind;
  readonly session: SessionId;
  readonly row: RowId;
  readonly group: Group['kind'];
  readonly way: ChangeWay;
  /** It follows from pain, a caution or a fact of health. */
  readonly safety: boolean;
  /** In order of the queue; never empty. */
  readonly places: readonly ChangedPlace[];
  /** It holds from the first of its places to the row's last session. */
  readonly toEnd: boolean;
  /** Of the new plan, what explains it best; absent where nothing in it does. */
  readonly reason?: Reason;
}

export interface MovedSession {
  readonly occurrence: number;
  readonly session: SessionId;
  readonly before: IsoDate;
  readonly after: IsoDate;
}

/** Something about the block as a whole. */
export type PlanChange =
  /** `goesOn`: its rows begin from what was marked in the one before. */
  | { readonly what: 'block'; readonly before: number; readonly after: number; readonly goesOn: boolean }
  | { readonly what: 'programme'; readonly before: ProgrammeId; readonly after: ProgrammeId }
  | { readonly what: 'dates'; readonly moved: readonly MovedSession[]; readonly reason?: Reason }
  /** How many sessions there are. */
  | { readonly what: 'sessions'; readonly before: number; readonly after: number; readonly reason?: Reason }
  /** The last day sessions are planned for; `null` where there is none. */
  | { readonly what: 'stops'; readonly before: IsoDate | null; readonly after: IsoDate | null };

export type Change = PlanChange | RowChange;

export const isRowChange = (change: Change): change is RowChange => 'row' in change;
