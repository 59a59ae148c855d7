/**
 * One programme row fitted to one client over the weeks: everything the walk reads, and nothing else.
 * It stands in `plan.json` under `inputs.strands`, so that an outsider can repeat the walk from that file alone.
 */
import type { ExerciseId, RowId, SessionId, Side } from './identity.js';
import type { LoadMode, MakeableLoad } from './kit.js';
import type { TempoStep } from './programme.js';
import type { Grams, PerMille, PerTenThousand, Tenths } from './quantity.js';

/** One session in which the row stands, in order of execution. */
export interface Occurrence {
  /** 1-based. */
  readonly week: number;
  /** A deload week. */
  readonly easy: boolean;
  /** Asked reserve after floors: `max(programme, floor)`, one rep more in a circuit. */
  readonly asked: Tenths;
  /** Reps in reserve that are never gone below. */
  readonly floor: Tenths;
  /** Sets of work, at least 1. */
  readonly sets: number;
  /** No step, and no more reps than this: pain, breaks, cautions. */
  readonly held?: { readonly maxReps: number | null; readonly why: string };
}

/** One allowed version of the movement, in a chain from easiest to hardest. */
export interface VersionInput {
  readonly exercise: ExerciseId;
  readonly mode: LoadMode;
  /** Thousandths of body mass the movement lifts; `null` where not known. */
  readonly share: PerMille | null;
  /** K of the next harder version for 1000 of this one's, from the link; `null` where not known. */
  readonly toHarder: PerMille | null;
  readonly toEasier: PerMille | null;
  /** Lightest first, no two of equal mass. Bodyweight: one load of 0 g. */
  readonly loads: readonly MakeableLoad[];
  /** The heaviest that is signed off, where a sign-off is needed; loads above it are not in `loads`. */
  readonly signedOffTo: Grams | null;
}

/** What one side, or both together, can lift now. */
export interface CapacityInput {
  readonly side: Side | 'both';
  /** Resisted load of the test in grams: external + ⌊share × body mass⌋; 1 where a share has no body mass. */
  readonly resisted: number;
  /** Reps + reserve, tenths. */
  readonly reps: Tenths;
  readonly weak: boolean;
}

/** What was tried and done as asked, often enough to be open. */
export interface TriedInput {
  readonly exercise: ExerciseId;
  readonly grams: Grams;
  /** As asked the last time. */
  readonly reps: number;
  /** In how many weeks. */
  readonly weeks: number;
}

export interface StrandInput {
  /** `session/row`. */
  readonly id: string;
  readonly session: SessionId;
  readonly row: RowId;
  readonly way: 'strength' | 'bodyweight' | 'combination';
  readonly equation: 'epley' | 'brzycki';
  /** Reps of the range. */
  readonly bottom: number;
  readonly top: number;
  readonly bodyMass: Grams | null;
  readonly versions: readonly VersionInput[];
  /** Slower tempi may be reached in this order; factor τ in thousandths. The first is normal, 1000, or where the row begins. */
  readonly tempi: readonly { readonly step: TempoStep; readonly factor: PerMille }[];
  readonly trials: boolean;
  /** `false`: no gate is offered, in a moderate plan or one that keeps steady. */
  readonly gates?: boolean;
  /** Gain g each work week, ten-thousandths. */
  readonly gain: PerTenThousand;
  /** The weaker side decides; absent where nothing is known: a feeler set. */
  readonly capacity: CapacityInput | null;
  /** Where the walk starts: the last logged or tested option, or the heaviest makeable below it. */
  readonly start: {
    readonly version: number;
    readonly load: Grams;
    readonly tempo: number;
    readonly earned: 0 | 1 | 2;
  } | null;
  /** A load or version above the start that its trials have opened: a plain rise, once it predicts the bottom and the floor. */
  readonly tried?: TriedInput;
  /** Greatest reps × R of one logged set; `null` without logs: the first occurrence is exempt from the volume rule. */
  readonly greatest: number | null;
  /**
   * Every week of the block in order, from the one being trained: so that gain is counted in weeks without this row too.
   */
  readonly weeks: readonly { readonly week: number; readonly easy: boolean }[];
  readonly occurrences: readonly Occurrence[];
  /** Values of the walk's own rules, by rule id, as used. */
  readonly rules: WalkRules;
}

export interface WalkRules {
  /** Tenths of a rep by which the asked reserve may be missed. */
  readonly tolerance: Tenths;
  /** A step is small up to this many thousandths above the load held. */
  readonly smallStep: PerMille;
  /** Reps above the floor that must be predicted for a trial. */
  readonly trialMargin: Tenths;
  /** Volume of a set against the greatest so far. */
  readonly volume: PerMille;
  /** Reps + reserve above which a test is weak. */
  readonly weakAbove: Tenths;
}
