/**
 * A strand as it stands in `plan.json` under `inputs.strands`, declared a second time: the oracle shares no type,
 * no constant and no function with the engine, so that a slip in one cannot hide in the other.
 */

export interface LoadJson {
  readonly grams: number;
  readonly mode: string;
  readonly pieces: readonly { readonly id: string; readonly grams: number }[];
  readonly label: string;
}

export interface VersionJson {
  readonly exercise: string;
  readonly mode: string;
  readonly share: number | null;
  readonly toHarder: number | null;
  readonly toEasier: number | null;
  readonly loads: readonly LoadJson[];
  readonly signedOffTo: number | null;
}

export interface OccurrenceJson {
  readonly week: number;
  readonly easy: boolean;
  readonly asked: number;
  readonly floor: number;
  readonly sets: number;
  readonly held?: { readonly maxReps: number | null; readonly why: string } | undefined;
}

export interface RulesJson {
  readonly tolerance: number;
  readonly smallStep: number;
  readonly trialMargin: number;
  readonly volume: number;
  readonly weakAbove: number;
}

export interface StrandJson {
  readonly id: string;
  readonly session: string;
  readonly row: string;
  readonly way: 'strength' | 'bodyweight' | 'combination';
  readonly equation: 'epley' | 'brzycki';
  readonly bottom: number;
  readonly top: number;
  readonly bodyMass: number | null;
  readonly versions: readonly VersionJson[];
  readonly tempi: readonly { readonly step: string; readonly factor: number }[];
  readonly trials: boolean;
  readonly gates?: boolean | undefined;
  readonly gain: number;
  readonly capacity: {
    readonly side: string;
    readonly resisted: number;
    readonly reps: number;
    readonly weak: boolean;
  } | null;
  readonly start: {
    readonly version: number;
    readonly load: number;
    readonly tempo: number;
    readonly earned: 0 | 1 | 2;
  } | null;
  readonly tried?: { readonly exercise: string; readonly grams: number } | undefined;
  readonly greatest: number | null;
  readonly weeks: readonly { readonly week: number; readonly easy: boolean }[];
  readonly occurrences: readonly OccurrenceJson[];
  readonly rules: RulesJson;
}

/** Version and tempo by their place in the strand's lists; the load in grams as printed. */
export interface Option {
  readonly version: number;
  readonly load: number;
  readonly tempo: number;
}

export const sameOption = (a: Option, b: Option): boolean =>
  a.version === b.version && a.load === b.load && a.tempo === b.tempo;
