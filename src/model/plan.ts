/**
 * The plan of one block for one client. This is `plan.json`: names here are fixed, others may be added.
 * It is the coach's own and never public.
 */
import type { IsoDate } from './day.js';
import type { Sides, Way } from './exercise.js';
import type {
  ClientId,
  ExerciseId,
  KitItemId,
  ProgrammeId,
  RowId,
  SessionId,
  SetKey,
  SetKind,
  Side,
} from './identity.js';
import type { LoadMode } from './kit.js';
import type { PlanInputs } from './plan-inputs.js';
import type { TempoStep } from './programme.js';
import type { Confidence, Seconds, Tenths } from './quantity.js';
import type { Audience, Reason, Rule } from './reason.js';

/** A load in kilograms, or a band by its step. */
export type PlanLoad = PlanMass | PlanBand;

export interface PlanBand {
  /** Its name, as the author wrote it. */
  readonly band: string;
  /** 1-based among the client's bands, the easiest to stretch first. */
  readonly step: number;
  readonly mode: LoadMode;
  readonly pieces: readonly { readonly id: KitItemId; readonly grams: number }[];
  /** As printed: `light band`. */
  readonly label: string;
  readonly kg?: never;
  readonly grams?: never;
}

export interface PlanMass {
  readonly band?: never;
  readonly step?: never;
  /** What one hand (`per-hand`) or both (`total`) hold. */
  readonly kg: number;
  readonly grams: number;
  readonly mode: LoadMode;
  readonly pieces: readonly { readonly id: KitItemId; readonly grams: number }[];
  /** As printed, in the author's unit: `16 kg`, `35 lb`. */
  readonly label: string;
}

/** A set as it would be without what a gate needs. */
export interface OtherwiseSet {
  readonly exercise: ExerciseId;
  /** One of reps, seconds, metres. */
  readonly reps?: number;
  readonly seconds?: Seconds;
  readonly metres?: number;
  /** Rising or falling reps, once through; `reps` is their sum. */
  readonly steps?: readonly number[];
  /** Straight after it, so many with the next load up. */
  readonly then?: { readonly reps: number; readonly load: PlanLoad };
  readonly load?: PlanLoad;
  readonly tempo: TempoStep;
  /** Absent where no reserve is predicted. */
  readonly reserve?: Tenths;
  readonly sets: number;
}

/** One line of a feeler set's table: if so many good reps were left, use this. */
export interface Choice {
  /** Reps left, inclusive; `max` 99 is "or more". */
  readonly left: { readonly min: number; readonly max: number };
  readonly exercise: ExerciseId;
  readonly reps: number;
  readonly load?: PlanLoad;
  readonly reserve: Tenths;
}

/** What must have been done for a gate to open. */
export interface GateNeeds {
  readonly exercise: ExerciseId;
  readonly load?: PlanLoad;
  /** One of reps, seconds, metres. */
  readonly reps?: number;
  readonly seconds?: Seconds;
  readonly metres?: number;
  /** Rising or falling reps, once through; `reps` is their sum. */
  readonly steps?: readonly number[];
  /** Straight after it, so many with the next load up. */
  readonly then?: { readonly reps: number; readonly load: PlanLoad };
  /** Absent where no reserve is predicted: done as asked is enough. */
  readonly reserve?: Tenths;
  /** The weeks in which it must have been done. */
  readonly weeks: readonly number[];
}

export interface PlanSet {
  readonly key: SetKey;
  readonly kind: SetKind;
  /** 1-based within the kind. */
  readonly round: number;
  /** Of work whose load a feeler set finds: the fewest of any line of that week's `choose`. */
  readonly reps?: number;
  readonly seconds?: Seconds;
  readonly metres?: number;
  /** Rising or falling reps, once through; `reps` is their sum. */
  readonly steps?: readonly number[];
  /** Straight after it, without a rest: so many with the next load up. */
  readonly then?: { readonly reps: number; readonly load: PlanLoad };
  /** Every rep begins from a stop. */
  readonly deadStop?: boolean;
  readonly side?: Side;
  /** Where it is not the item's own: the harder version that a trial set tries; what is warmed up with before a gate. */
  readonly exercise?: ExerciseId;
  readonly load?: PlanLoad;
  /** Predicted reserve after it; of work whose load a feeler set finds, the asked one. */
  readonly reserve?: Tenths;
  readonly gate?: { readonly needs: GateNeeds };
  readonly otherwise?: readonly OtherwiseSet[];
  /** On an item's first set, where nothing is known of it: the work each answer to the feeler set leads to this week. */
  readonly choose?: readonly Choice[];
  readonly optional?: boolean;
  /** Of a test: stop with this many good reps left; no number of reps is asked for beyond `reps`. */
  readonly stopAt?: { readonly reserve: Tenths };
}

/** How hard breath may work, by the talk test. */
export type Talk = 'sentences' | 'phrases';

/** An option that stood open at a step, or did not and why: material for audit and for *why not the next one up*. */
export interface AllowedOption {
  readonly exercise: ExerciseId;
  readonly tempo: TempoStep;
  readonly grams: number;
  /** Reps to failure there. */
  readonly predicted: Tenths;
  /** Of a ladder: the rung, from 1; nothing is predicted there. */
  readonly rung?: number;
  /** Rule id that refuses it as the next step; absent where it is open. */
  readonly refusedBy?: string;
}

export interface EasierItem {
  readonly exercise?: string;
  readonly way?: Way;
  readonly say: string;
  readonly for: readonly string[];
  readonly sets: readonly PlanSet[];
}

export interface Item {
  /** `session/row/week`. */
  readonly id: string;
  readonly row: RowId;
  /** The version planned this week. */
  readonly exercise: ExerciseId;
  /** Done only in this easier way of its own, `exercise#way`, since a caution asks for it: what it is called. */
  readonly done?: { readonly way: string; readonly say: string };
  readonly way: Way;
  readonly sides: Sides;
  readonly tempo: TempoStep;
  readonly restSeconds: Seconds;
  readonly asked: {
    readonly min: number;
    readonly max: number;
    /** What `min` and `max` count. */
    readonly unit: 'reps' | 'seconds' | 'metres';
    /** `null` where none is counted: a ladder. */
    readonly reserve: Tenths | null;
    readonly sets: number;
  };
  readonly capacity: {
    readonly equation: 'epley' | 'brzycki';
    readonly grams: number;
    readonly side: Side | 'both';
    readonly confidence: Confidence;
  } | null;
  readonly allowed: readonly AllowedOption[];
  /** Rules relaxed to find anything at all, by id. */
  readonly relaxed: readonly string[];
  readonly sets: readonly PlanSet[];
  readonly easier: readonly EasierItem[];
  readonly harder: readonly EasierItem[];
  readonly reasons: readonly Reason[];
  /** Where breath is the measure: what can still be said. */
  readonly talk?: Talk;
  /** Of a ladder: the rung, from 1, of how many. */
  readonly rung?: { readonly number: number; readonly of: number };
}

export interface Group {
  readonly kind: 'warm-up' | 'straight' | 'circuit' | 'cool-down' | 'test';
  readonly name: string;
  readonly rounds: number;
  readonly everySeconds?: Seconds;
  readonly workSeconds?: Seconds;
  readonly pauseSeconds?: Seconds;
  /** A warm-up or cool-down without items of its own has its length here. */
  readonly minutes?: number;
  readonly items: readonly Item[];
}

export interface Trim {
  readonly row: RowId;
  readonly what: 'sets' | 'row';
  readonly sets: number;
  readonly reason: Reason;
}

export interface PlanSession {
  readonly id: SessionId;
  readonly name: string;
  readonly date: IsoDate;
  /** 1-based place in the block's queue. */
  readonly occurrence: number;
  readonly minutes: number;
  readonly trimmed: readonly Trim[];
  readonly groups: readonly Group[];
  /** What counts as the session done on a bad day: some of its own sets, by their keys, in order. */
  readonly short: { readonly minutes: number; readonly sets: readonly SetKey[] };
}

export interface Week {
  readonly number: number;
  readonly begins: IsoDate;
  readonly deload: boolean;
  readonly sessions: readonly PlanSession[];
}

/** Something worth telling the coach, or the client, that stops nothing. */
export interface Finding {
  readonly rule: string;
  readonly audience: Audience;
  readonly session?: SessionId;
  readonly row?: RowId;
  readonly weeks: readonly number[];
  readonly reason: Reason;
}

export interface Plan {
  /** Version of this format. */
  readonly schema: 1;
  /** Digest of client, programme, edition and start, made outside the engine's decisions. */
  readonly planId: string;
  readonly client: ClientId;
  readonly programme: ProgrammeId;
  /** 0 for a draft. */
  readonly edition: number;
  /** The client's block, from 1: set keys begin with it. */
  readonly block: number;
  readonly starts: IsoDate;
  readonly today: IsoDate;
  readonly engine: string;
  readonly rules: readonly Rule[];
  readonly inputs: PlanInputs;
  readonly weeks: readonly Week[];
  readonly findings: readonly Finding[];
  /** Sessions after this day are not planned. */
  readonly stops?: { readonly after: IsoDate; readonly because: 'clearance' | 'due date' };
}
