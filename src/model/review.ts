/**
 * What came of a client's weeks, as the coach goes through it: what was done of what was planned, what each side can lift
 * now, pain, load, and what is proposed. Data only; `words` phrases it, and nothing here decides anything by itself.
 */
import type { IsoDate } from './day.js';
import type { Edit } from './edit.js';
import type { ClientId, ExerciseId, ProgrammeId, RowId, SessionId, Side } from './identity.js';
import type { AlarmSign, LogEvent, PainReport } from './log.js';
import type { PlanLoad } from './plan.js';
import type { TempoStep } from './programme.js';
import type { Tenths } from './quantity.js';
import type { Reason } from './reason.js';

/** Why a client is to be looked at, most pressing first. */
export const NEEDS = [
  'alarm',
  'pain',
  'withdrawn',
  'gap',
  'block ends',
  'worth a look',
  'not begun',
  'as planned',
] as const;
export type Need = (typeof NEEDS)[number];

export interface ReviewedBlock {
  /** 1-based. */
  readonly block: number;
  /** Its latest edition. */
  readonly edition: number;
  readonly programme: ProgrammeId;
  readonly begins: IsoDate;
  /** The last day of its last week. */
  readonly ends: IsoDate;
  /** 1-based, the week that today is in; 0 before the first, `weeks` + 1 after the last. */
  readonly week: number;
  readonly weeks: number;
}

/** Seven days of the block, counted from the day it began; the week of the plan that a session belongs to may be another. */
export interface WeekDone {
  readonly week: number;
  readonly begins: IsoDate;
  readonly ends: IsoDate;
  /** Training days in it, whether in a break or not: the sessions that it began with. */
  readonly trainingDays: number;
  /** Those of them that lie in no break the coach wrote. */
  readonly planned: number;
  readonly done: number;
  /** Its last day is past. */
  readonly over: boolean;
}

export interface SessionReviewed {
  readonly session: SessionId;
  readonly name: string;
  /** 1-based place in the queue. */
  readonly occurrence: number;
  readonly week: number;
  readonly planned: IsoDate;
  /** `null` where it is not done. */
  readonly done: IsoDate | null;
  readonly today: Extract<LogEvent, { readonly kind: 'opened' }>['today'] | null;
  /** 0–10, as said. */
  readonly effort: number | null;
  readonly minutes: number | null;
  readonly minutesPlanned: number;
}

export interface RowReviewed {
  readonly session: SessionId;
  readonly row: RowId;
  /** As planned last. */
  readonly exercise: ExerciseId;
  /** Sessions done in which it was planned. */
  readonly sessions: number;
  /** How often: each of those sessions counts once. */
  readonly asPlanned: number;
  readonly more: number;
  readonly less: number;
  readonly easier: number;
  readonly leftOut: number;
  /** Nothing was marked of it. */
  readonly unmarked: number;
  /** Left out or unmarked in so many sessions running, up to the last. */
  readonly quiet: number;
  /** Sets, and what they come to together, over those sessions of which something of the row was done. */
  readonly sets: Compared;
  readonly amount: Compared & { readonly unit: 'reps' | 'seconds' | 'metres' };
  /** The load of the last set of work, where it has one. */
  readonly load: { readonly planned: PlanLoad | null; readonly done: PlanLoad | null };
}

export interface Compared {
  readonly planned: number;
  readonly done: number;
}

/** Reserve said against reserve asked. */
export interface EffortReviewed {
  readonly exercise: ExerciseId;
  /** Mean of said less asked, rounded half away from 0: below 0 it was harder than asked. */
  readonly difference: Tenths;
  readonly n: number;
}

/** One marked set by which a side is known. */
export interface Estimate {
  readonly date: IsoDate;
  readonly load: PlanLoad | null;
  readonly tempo: TempoStep;
  readonly reps: number;
  readonly reserve: Tenths;
  /** A test, a reserve that was said, or only what the plan predicted. */
  readonly by: 'test' | 'said' | 'unsaid';
  readonly weak: boolean;
  /** Reps to failure that it comes to at the load of the last estimate, at normal tempo. */
  readonly at: Tenths;
}

/** What a side can lift now. */
export interface Ability {
  readonly exercise: ExerciseId;
  readonly side: Side | 'both';
  readonly first: Estimate;
  readonly latest: Estimate;
  /** Of the last three the one in the middle, of two the lower. */
  readonly middle: Estimate;
  /** Of the last three, reps to failure at the load of the last. */
  readonly lowest: Tenths;
  readonly highest: Tenths;
  readonly n: number;
}

/** The middle estimates of both sides, at the load of the weaker side's last. */
export interface SidesApart {
  readonly exercise: ExerciseId;
  readonly weaker: Side;
  readonly load: PlanLoad | null;
  readonly reps: Readonly<Record<Side, Tenths>>;
}

export interface PainReviewed {
  readonly date: IsoDate;
  readonly degree: number;
  readonly worseNextMorning: boolean;
  /** What it was felt in; `null` where it was said of a session. */
  readonly exercise: ExerciseId | null;
  /** Seen by the coach, not marked. */
  readonly seen: boolean;
  /** The coach has written since that it is cleared. */
  readonly cleared: boolean;
}

/** One place of the body, over time. */
export interface PainPlace {
  readonly where: PainReport['where'];
  readonly side: Side | 'both';
  /** In order of day. */
  readonly reports: readonly PainReviewed[];
  /** The last day's worst against that of the day before it on which there was any. */
  readonly trend: 'once' | 'less' | 'the same' | 'more';
  /** Days since the last report. */
  readonly quietDays: number;
}

export interface AlarmReviewed {
  readonly date: IsoDate;
  readonly sign: AlarmSign;
  readonly cleared: boolean;
}

/** Load of seven days: effort said, 0–10, times minutes said (Foster 1998). */
export type LoadOfDays =
  | {
      readonly kind: 'known';
      readonly total: number;
      /** Population SD over the seven days, and what follows from it. */
      readonly sd: number;
      readonly monotony: number;
      readonly strain: number;
    }
  /** Seven days alike have no SD: nothing is divided. `total` is 0 where there was no session. */
  | { readonly kind: 'alike'; readonly total: number }
  /** Days with a session of which effort or minutes were not said. */
  | { readonly kind: 'not known'; readonly days: readonly number[] };

export type WeekLoad = { readonly week: number; readonly begins: IsoDate } & (
  | Extract<LoadOfDays, { readonly kind: 'known' | 'alike' }>
  | { readonly kind: 'not known'; readonly days: readonly IsoDate[] }
  /** Its seven days are not over: the sum up to today, of what was said. */
  | { readonly kind: 'running'; readonly total: number; readonly days: readonly IsoDate[] }
);

/** Something for the coach to do, or to write down. */
export interface Proposal {
  /** Its rule and figures; for the coach. */
  readonly reason: Reason;
  /** What would be written on the client's page; empty where it is a matter of talking or of looking. */
  readonly edits: readonly Edit[];
}

export interface Review {
  readonly client: ClientId;
  readonly today: IsoDate;
  readonly need: Need;
  /** The block under way, or the last one; `null` where nothing was issued. */
  readonly block: ReviewedBlock | null;
  /** The day the latest edition was withdrawn; `null` where it was not. */
  readonly withdrawn: IsoDate | null;
  readonly lastMark: IsoDate | null;
  /**
   * Days since the last mark, or since the first session planned where nothing came back, up to the last day of the block;
   * `null` where none is due, or the edition is withdrawn.
   */
  readonly silentDays: number | null;
  readonly weeks: readonly WeekDone[];
  readonly sessions: readonly SessionReviewed[];
  readonly rows: readonly RowReviewed[];
  readonly effort: readonly EffortReviewed[];
  readonly abilities: readonly Ability[];
  readonly sides: readonly SidesApart[];
  readonly alarms: readonly AlarmReviewed[];
  readonly pain: readonly PainPlace[];
  readonly loads: readonly WeekLoad[];
  readonly notes: readonly { readonly date: IsoDate; readonly text: string }[];
  /** What to do first stands first. */
  readonly proposals: readonly Proposal[];
}
