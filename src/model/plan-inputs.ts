/** What a plan was made from, as `plan.json` keeps it: to be audited by, and for a phone without the library to plan on. */
import type { IsoDate } from './day.js';
import type { Dose } from './dose.js';
import type { Ask, Facts } from './exercise.js';
import type { ExerciseId, KitItemId, Side } from './identity.js';
import type { KitKind } from './kit.js';
import type { LadderInput } from './ladder.js';
import type { TempoStep } from './programme.js';
import type { Tenths } from './quantity.js';
import type { StrandInput } from './strand.js';

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
  readonly blocksBefore: number;
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
    /** What occurrences at the top of the range earned, to which later ones add; absent where that is all of it. */
    readonly tops?: 0 | 1 | 2;
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
