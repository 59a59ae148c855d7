/**
 * One programme row whose way of working has no reps to failure to count by: swing work, holds, carries, mobility,
 * conditioning, and anything on bands. It walks an ordered list of rungs. Everything the ladder reads stands here and,
 * in `plan.json`, under `inputs.ladders`, so that an outsider can repeat it from that file alone.
 */
import type { Way } from './exercise.js';
import type { ExerciseId, KitItemId, RowId, SessionId } from './identity.js';
import type { LoadMode, MakeableLoad } from './kit.js';
import type { Seconds } from './quantity.js';

/** A band by its place among the client's own, the easiest first; never kilograms. */
export interface BandLoad {
  /** Its name, as the author wrote it. */
  readonly band: string;
  /** 1-based among the client's bands, the easiest to stretch first. */
  readonly step: number;
  /** `assisted` where it helps: then the hardest to stretch is the easiest to work with. */
  readonly mode: Extract<LoadMode, 'band' | 'assisted'>;
  readonly pieces: readonly { readonly id: KitItemId; readonly grams: 0 }[];
  /** As printed: `light band`. */
  readonly label: string;
}

export type RungLoad = MakeableLoad | BandLoad;

/** What one set of a rung is. */
export type RungDose =
  | { readonly kind: 'reps'; readonly reps: number }
  | { readonly kind: 'seconds'; readonly seconds: Seconds }
  | { readonly kind: 'metres'; readonly metres: number }
  /** So many reps at every signal, for so many minutes: the sets are the signals. */
  | { readonly kind: 'every'; readonly reps: number; readonly everySeconds: Seconds; readonly minutes: number }
  /** So many with the load, then at once so many with the next one up. */
  | { readonly kind: 'main-next'; readonly main: number; readonly next: number }
  /** Rising or falling reps, once through. */
  | { readonly kind: 'steps'; readonly reps: readonly number[] }
  /** One round of what the exercise itself describes. */
  | { readonly kind: 'round' };

export interface Rung {
  readonly exercise: ExerciseId;
  /** `null` for the body alone. */
  readonly load: RungLoad | null;
  /** What `main-next` ends with. */
  readonly nextUp: RungLoad | null;
  /** Begun from a stop at every rep: how fast lifts are learnt. */
  readonly deadStop: boolean;
  readonly dose: RungDose;
  /** From 0; rungs of one stage share exercise and load. A new stage is a new load, or a harder version. */
  readonly stage: number;
}

export interface LadderOccurrence {
  /** 1-based. */
  readonly week: number;
  readonly easy: boolean;
  /** Sets of work, at least 1; of a dose `every` the signals there would be in the longest minutes of any rung. */
  readonly sets: number;
  /** Nothing is made harder: pain, breaks, cautions. */
  readonly held?: { readonly why: string };
}

export interface LadderInput {
  /** `session/row`. */
  readonly id: string;
  readonly session: SessionId;
  readonly row: RowId;
  readonly way: Way;
  /** Easiest first; at least one. */
  readonly rungs: readonly Rung[];
  /** Index of the rung it starts on. */
  readonly start: number;
  /** Occurrences at the start's rung that count already, from logs. */
  readonly earned: 0 | 1 | 2;
  /** Whether a new stage may be offered behind a gate: not with a caution on the way, nor in a moderate plan. */
  readonly gates: boolean;
  readonly occurrences: readonly LadderOccurrence[];
  readonly rules: LadderRules;
}

export interface LadderRules {
  /** Work occurrences at a rung, done as asked, before the next one. */
  readonly earned: number;
  /** Different weeks in which the rung before a new stage was done. */
  readonly weeks: number;
  /** Rungs down in an easy week whose sets could not fall. */
  readonly easyDown: number;
}
