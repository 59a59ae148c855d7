/** A coach's template: written once, fitted to each client. */
import type { BellRole, Dose, Effort } from './dose.js';
import type { Pattern, Plane } from './exercise.js';
import type { ExerciseId, ProgrammeId, RowId, SessionId } from './identity.js';
import type { Place } from './place.js';
import type { Line } from './prose.js';
import type { PerMille, Seconds, Tenths } from './quantity.js';

/** Slower ways the engine may reach when nothing else climbs. */
export type TempoStep = 'normal' | 'slow lowering' | 'slow with a pause';

export type RowTarget =
  | { readonly kind: 'exercise'; readonly id: ExerciseId }
  /** To be filled from the library. */
  | { readonly kind: 'pattern'; readonly pattern: Pattern; readonly plane?: Plane };

export interface Row {
  readonly id: RowId;
  readonly target: RowTarget;
  readonly dose: Dose;
  /** Absent: the curve of the programme decides. */
  readonly effort?: Effort;
  readonly bell?: BellRole;
  readonly restSeconds: Seconds;
  /** Tempi this row may use, the first is where it starts. */
  readonly tempi: readonly TempoStep[];
  readonly trials: boolean;
  readonly optional: boolean;
  readonly place: Place;
}

export interface Block {
  readonly name: string;
  /** Set by set; one set of each row in turn; or the coach's own warm-up or cool-down in place of the planner's. */
  readonly kind: 'straight' | 'circuit' | 'warm-up' | 'cool-down';
  /** A circuit's rounds. */
  readonly rounds?: number;
  readonly rows: readonly Row[];
}

export interface SessionTemplate {
  readonly id: SessionId;
  readonly name: string;
  readonly notes: readonly Line[];
  readonly blocks: readonly Block[];
  readonly place: Place;
}

export interface CurveWeek {
  /** Asked reserve. */
  readonly reserve: Tenths;
  /** Share of the row's sets. */
  readonly share: PerMille;
  readonly easy: boolean;
}

export interface Expectation {
  readonly client: string;
  readonly week: number;
  readonly session: SessionId;
  readonly row: RowId;
  /** As printed: `16 kg × 8`. */
  readonly text: string;
  readonly place: Place;
}

export interface Programme {
  readonly id: ProgrammeId;
  readonly name: string;
  readonly forWhom: string;
  readonly public: boolean;
  readonly curve: readonly CurveWeek[];
  readonly sessions: readonly SessionTemplate[];
  /** Days a week → the order of sessions over the weeks; absent where a client has as many days as there are sessions. */
  readonly rotations: readonly { readonly days: number; readonly order: readonly SessionId[] }[];
  /** Rows never cut for time. */
  readonly neverCut: readonly RowId[];
  /** Rows tested in the first and again in the last session they stand in. */
  readonly tests: readonly RowId[];
  /** Rows cut first, in this order. */
  readonly cutFirst: readonly RowId[];
  readonly description: readonly Line[];
  readonly expectations: readonly Expectation[];
  readonly place: Place;
}
