/**
 * Where a walk stands when a rule is asked: what never changes in a strand (`Ground`) and what the sessions before
 * have left (`Situation`). Rules read it; only the walk writes it.
 */
import type { Grams, Tenths } from '../../model/quantity.js';
import type { Occurrence, StrandInput } from '../../model/strand.js';
import { type Equation, repsToFailure, slowedReps } from '../capacity.js';

/** One version, counted out once. */
export interface Footing {
  /** External load in grams, lightest first. */
  readonly external: readonly Grams[];
  /** R of each load. */
  readonly resisted: readonly number[];
  readonly counted: boolean;
}

/** Whether rules that hold for every strand alike are among those walked by. */
export interface Habits {
  readonly volumeOneRep: boolean;
  readonly volumeFirstExempt: boolean;
  readonly tempoCounts: boolean;
  readonly tempoReset: boolean;
  readonly halfReps: boolean;
  readonly newIsLighter: boolean;
  readonly tempoBeforeLoad: boolean;
  readonly bodyweightVersionFirst: boolean;
  readonly heldReps: boolean;
  readonly floor: boolean;
  readonly fewest: boolean;
  readonly earnedReset: boolean;
  readonly trialCloses: boolean;
  readonly easyWeek: boolean;
  readonly easyDepth: boolean;
  readonly easyLeast: boolean;
}

/** Values of one strand that a removed rule leaves neutral. */
export interface Values {
  readonly tolerance: Tenths;
  /** Steps up to this many thousandths are small. */
  readonly smallStep: number;
  readonly trialMargin: Tenths;
  /** Most reps of a trial on a weak estimate. */
  readonly weakTrial: number;
  readonly gates: boolean;
  readonly volume: number;
  readonly top: number;
}

/** What is the same in every occurrence of a week. */
export interface WeekOfWalk {
  /** Capacity of each version; 0 where nothing is derived. */
  readonly capacities: readonly number[];
  /** Work weeks of the block before it. */
  readonly workWeeks: number;
}

export interface Ground {
  readonly input: StrandInput;
  readonly footings: readonly Footing[];
  readonly equation: Equation;
  /** n₀ in tenths. */
  readonly tested: Tenths;
  readonly weak: boolean;
  readonly habits: Habits;
  readonly values: Values;
  /** By week of the block. */
  readonly weeks: ReadonlyMap<number, WeekOfWalk>;
  /** Where the walk began; `load` is an index. */
  readonly began: Place;
}

/** Version, load and tempo as indices. */
export interface Place {
  readonly version: number;
  readonly load: number;
  readonly tempo: number;
}

/** A place one might go to, with the reps to failure predicted there. */
export interface Candidate extends Place {
  readonly predicted: Tenths;
}

export interface Situation {
  readonly ground: Ground;
  readonly occurrence: Occurrence;
  readonly week: WeekOfWalk;
  readonly place: Place;
  readonly earned: 0 | 1 | 2;
  /** Weeks of this block in which it was earned, and the reserve asked the last time. */
  readonly earnedIn: readonly number[];
  readonly earnedAsked: Tenths | null;
  readonly gate: 'none' | 'open' | 'used';
  /** What the open trial tried, and how. */
  readonly tried: { readonly place: Place; readonly reps: number; readonly week: number } | null;
  /** Greatest reps × R of a set. */
  readonly greatest: number | null;
  readonly lastWork: { readonly place: Place; readonly reps: number; readonly sets: number } | null;
}

/** Its trials have opened it: see `StrandInput.tried`. */
export function isTried({ input }: Ground, { version, load }: Place): boolean {
  const own = input.versions[version];
  const { tried } = input;
  return tried !== undefined && own?.exercise === tried.exercise && own.loads[load]?.grams === tried.grams;
}

export const samePlace = (a: Place, b: Place): boolean =>
  a.version === b.version && a.load === b.load && a.tempo === b.tempo;

export function externalAt(ground: Ground, place: Place): Grams {
  return ground.footings[place.version]?.external[place.load] ?? 0;
}

export function resistedAt(ground: Ground, place: Place): number {
  return ground.footings[place.version]?.resisted[place.load] ?? 1;
}

/** Reps to failure in tenths at a place, its tempo counted. */
export function predictedAt(at: Situation, version: number, load: number, tempo: number): Tenths {
  const { ground } = at;
  const capacity = at.week.capacities[version] ?? 0;
  const resisted = ground.footings[version]?.resisted[load] ?? 1;
  if (capacity <= 0) return -300;
  const normal = repsToFailure(ground.equation, capacity, ground.tested, resisted);
  const factor = ground.input.tempi[tempo]?.factor ?? 1000;
  return factor === 1000 || !ground.habits.tempoCounts ? normal : slowedReps(normal, factor);
}

/** Reps a hold caps sets at; `null` where nothing does. */
export function capOf(at: Situation): number | null {
  const cap = at.ground.habits.heldReps ? (at.occurrence.held?.maxReps ?? null) : null;
  return cap === null ? null : Math.max(1, cap);
}

/** The range, read from below where a cap on reps lies under its bottom. */
export function bottomOf(at: Situation): number {
  return Math.min(at.ground.input.bottom, capOf(at) ?? at.ground.input.bottom);
}

export function topOf(at: Situation): number {
  return Math.min(at.ground.values.top, capOf(at) ?? at.ground.values.top);
}
