/**
 * The plan of one block for one client. This is `plan.json`: names here are fixed, others may be added.
 * It is the coach's own and never public.
 */
import type { IsoDate } from './day.js';
import type { Dose } from './dose.js';
import type { Ask, Facts, Sides, Way } from './exercise.js';
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
import type { KitKind, LoadMode } from './kit.js';
import type { LadderInput } from './ladder.js';
import type { TempoStep } from './programme.js';
import type { Confidence, Seconds, Tenths } from './quantity.js';
import type { Audience, Reason, Rule } from './reason.js';
import type { StrandInput } from './strand.js';

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

export interface PlanInputs {
  readonly kit: readonly {
    readonly id: KitItemId;
    readonly kind: KitKind;
    readonly grams: number | null;
    readonly label: string;
  }[];
  readonly capacities: readonly {
    readonly exercise: ExerciseId;
    readonly side: Side | 'both';
    /** R₀ × (300 + n₀ in tenths); see the engine's document. */
    readonly k: number;
    readonly test: {
      readonly date: IsoDate;
      readonly grams: number;
      readonly reps: number;
      readonly reserve: Tenths;
      /** Where it was slower than normal: `k` is of the fewest reps at normal tempo that go with it. */
      readonly tempo?: TempoStep;
      /** Made from what the client marked, not by the coach. */
      readonly marked?: true;
    };
    readonly weak: boolean;
  }[];
  readonly floors: readonly { readonly rule: string; readonly reserve: Tenths; readonly weeks: readonly number[] }[];
  readonly cautions: readonly {
    readonly what: string;
    readonly degree: string;
    readonly side: Side | 'both';
    readonly phases?: readonly string[];
    readonly from: IsoDate;
    readonly until?: IsoDate;
    readonly review?: IsoDate;
    readonly by: string;
  }[];
  readonly flags: readonly string[];
  readonly minutesCap: number;
  readonly days: readonly number[];
  readonly bodyMass: number | null;
  readonly experience: string;
  readonly birthYear: number;
  /** How many blocks went before: 0 is a first block. */
  readonly blocksBefore?: number;
  readonly curve: readonly { readonly reserve: Tenths; readonly share: number; readonly easy: boolean }[];
  readonly shares: readonly {
    readonly exercise: ExerciseId;
    readonly share: number;
    readonly standing: string;
    readonly source: string;
  }[];
  readonly room: {
    readonly ceilingMillimetres?: number;
    readonly floorMillimetres?: { readonly long: number; readonly wide: number };
  };
  readonly signOffs: readonly {
    readonly exercise: ExerciseId;
    readonly grams: number | null;
    readonly date: IsoDate;
    readonly by: string;
  }[];
  readonly clearance: {
    readonly by: string;
    readonly date: IsoDate;
    readonly until?: IsoDate;
    readonly for: string;
  } | null;
  readonly screening: {
    readonly date: IsoDate;
    readonly regularExercise: string;
    readonly knownDisease: string;
    readonly symptoms: string;
  } | null;
  readonly strands: readonly StrandInput[];
  readonly ladders: readonly LadderInput[];
  /** What screening came to; see the engine's document. */
  readonly standing: {
    readonly moderate: boolean;
    /** Cautions that follow from a fact of health by a rule, beside the coach's own. */
    readonly derived: readonly { readonly rule: string; readonly what: string; readonly degree: string }[];
    readonly health: readonly { readonly fact: string; readonly value: string }[];
  };
  /** Main bells by movement pattern, as the coach stated them. */
  readonly mainBells: readonly { readonly pattern: string; readonly grams: number }[];
  readonly breaks: readonly { readonly from: IsoDate; readonly until: IsoDate; readonly cause: string }[];
  /**
   * The sessions of this block that were done before it was planned again, in order of occurrence: they stand in `weeks`
   * as in the edition they were done in. Absent where nothing of the block was done.
   */
  readonly done?: readonly DoneInput[];
  /** What marks and observations say of an exercise beside its tests; absent where they say nothing. */
  readonly recalls?: readonly RecallInput[];
  /** Where the coach lets the phone plan again within bounds; absent where the plan stays as it is. */
  readonly replanning?: ReplanningInput;
}

/** What a phone without the library reads to plan the rest again by the planner's own rules. */
export interface ReplanningInput {
  /** Every exercise that a set may be done with, by id. */
  readonly exercises: readonly ReplannedExercise[];
  /** Every walked row as it was fitted, in the order of `strands`. */
  readonly rows: readonly ReplannedRow[];
  /** Health asks for steady work: no gain, no trials, no gates. */
  readonly steady: boolean;
}

/** What of a walked row its strand does not say. */
export interface ReplannedRow {
  /** `session/row`. */
  readonly id: string;
  /** What the programme names; for a pattern what was chosen to fill it. */
  readonly target: ExerciseId;
  /** Index of the version it begins with where nothing was marked. */
  readonly base: number;
  readonly dose: Dose;
  /** The row's own effort as reserve; `null` where the curve decides. */
  readonly effort: Tenths | null;
  /** Loads up to this part of one maximum, per cent; `null` where the row does not say. */
  readonly percent: number | null;
  readonly inCircuit: boolean;
  /** Begins with a bell by its role. */
  readonly byRole: boolean;
  readonly trials: boolean;
  /** A version that it goes through meets a caution. */
  readonly cautioned: boolean;
}

/** Of one exercise what marks, pain and cautions are read by. */
export interface ReplannedExercise
  extends Pick<Facts, 'pattern' | 'way' | 'sides' | 'holds' | 'signOff' | 'onTheFloor' | 'measure'> {
  readonly exercise: ExerciseId;
  readonly load: Facts['kit']['load'];
  readonly unloaded: boolean;
  readonly ceiling: Facts['room']['ceiling'];
  /** Thousandths of body mass; `null` where not known. */
  readonly share: number | null;
  readonly asks: readonly Ask[];
}

export interface DoneInput {
  /** 1-based place in the block's queue. */
  readonly occurrence: number;
  readonly day: IsoDate;
  readonly edition: number;
}

export interface RecallInput {
  readonly exercise: ExerciseId;
  readonly last?: {
    readonly date: IsoDate;
    readonly grams: number;
    readonly tempo: TempoStep;
    readonly reps: number;
    readonly earned: number;
    /** Greatest reps × resisted load of one set. */
    readonly greatest: number | null;
  };
  /** Where each row ended that ended in this exercise, by `session/row`; the strand or ladder begins from it. */
  readonly rows?: readonly {
    readonly row: string;
    readonly date: IsoDate;
    readonly earned: number;
    /** Loads to go down from there. */
    readonly lighter: number;
    /** Absent on a ladder. */
    readonly grams?: number;
  }[];
  /** Left out until the coach has cleared it. */
  readonly leave?: { readonly from: IsoDate; readonly where: string; readonly side: Side | 'both' };
  readonly hold?: { readonly until: IsoDate; readonly why: string; readonly maxReps: number | null };
  readonly floor?: { readonly until: IsoDate; readonly reserve: Tenths; readonly rule: string };
  readonly tempo?: TempoStep;
  /** Loads down from where the row would begin. */
  readonly lighter: number;
  readonly earned: number;
  readonly weak: boolean;
  readonly side?: Side;
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
  /** The client's block, from 1: set keys begin with it. Absent in plans of before it was said. */
  readonly block?: number;
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
