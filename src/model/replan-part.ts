/**
 * What travels beside a client's plan where the coach lets the phone plan again: the least of the plan's inputs by which
 * the rest comes out as it would from the whole. Figures and ids; no name, no note, no caution, no body mass, no birth
 * year, no reason. Names are those of the plan's inputs where the value is the same.
 */
import type { IsoDate } from './day.js';
import type { ExerciseId, Side } from './identity.js';
import type { LadderInput } from './ladder.js';
import type { PlanInputs, ReplanningInput } from './plan-inputs.js';
import type { TempoStep } from './programme.js';
import type { Tenths } from './quantity.js';
import type { StrandInput } from './strand.js';

export interface ReplanPart {
  /** The day the plan was made. */
  readonly made: IsoDate;
  /** In force where the rulebook has another value, by rule. */
  readonly rules: Readonly<Record<string, number>>;
  /** Predicted reserve of each set of the client's plan in reading order; `null` where none is predicted. */
  readonly reserves: readonly (Tenths | null)[];
  readonly tests: readonly ReplanTest[];
  /** Reserves not gone below; which rule asks for them stays at home. */
  readonly floors: readonly { readonly reserve: Tenths; readonly weeks: readonly number[] }[];
  readonly days: PlanInputs['days'];
  readonly curve: PlanInputs['curve'];
  readonly blocksBefore: number;
  readonly novice: boolean;
  /** Took no regular exercise before. */
  readonly begins: boolean;
  /** The first year in which a rule for older clients holds, none before the block's own; `null` where none comes near. */
  readonly olderIn: number | null;
  /** Whether a share of the body can be counted: shares here are the grams themselves. */
  readonly weighed: boolean;
  readonly strands: readonly Omit<StrandInput, 'bodyMass'>[];
  readonly ladders: readonly LadderInput[];
  /** Those that still count. */
  readonly breaks: PlanInputs['breaks'];
  readonly done: NonNullable<PlanInputs['done']>;
  readonly recalls: readonly {
    readonly exercise: ExerciseId;
    readonly earned: number;
    readonly tops: readonly { readonly row: string; readonly tops: 0 | 1 | 2 }[];
  }[];
  readonly exercises: ReplanningInput['exercises'];
  readonly rows: ReplanningInput['rows'];
  /** No gain, no trials, no gates. */
  readonly steady: boolean;
}

export interface ReplanTest {
  readonly exercise: ExerciseId;
  readonly side: Side | 'both';
  readonly date: IsoDate;
  readonly grams: number;
  readonly reps: number;
  readonly reserve: Tenths;
  readonly tempo?: TempoStep;
  readonly marked?: true;
  readonly weak: boolean;
}
