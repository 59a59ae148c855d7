/**
 * What a client can lift, in whole numbers: resisted loads, capacity, its gain, how it passes from version to
 * version, and the reps to failure it predicts. Decides nothing; the walk decides.
 */
import type { MakeableLoad } from '../model/kit.js';
import type { Grams, PerMille, PerTenThousand, Tenths } from '../model/quantity.js';
import type { CapacityInput, StrandInput, VersionInput } from '../model/strand.js';

export type Equation = StrandInput['equation'];

/** Epley: RTF at R is (K − 300 R) / R, so K = R × (300 + reps in tenths). */
const EPLEY_TENTHS = 300;
/** Brzycki: 36 / (37 − r), in tenths of a rep. */
const BRZYCKI_TENTHS = 370;

/**
 * Grams the hands hold or the body carries, both hands together: the sum of the items that make the load, since
 * `grams` of a `per-hand` load is what one hand holds. A load listed without items counts as its `grams`.
 */
export function externalLoad(load: MakeableLoad): Grams {
  if (load.pieces.length === 0) return load.grams;
  let sum = 0;
  for (const piece of load.pieces) sum += piece.grams;
  return sum;
}

/** ⌊share × body mass⌋ in grams; 0 where either is not known. */
export function bodyPart(share: PerMille | null, bodyMass: Grams | null): Grams {
  return Math.floor(((share ?? 0) * (bodyMass ?? 0)) / 1000);
}

/**
 * Whether loads of this version can be derived from one another: not where the movement lifts part of a body whose
 * mass is not on file, and not where nothing is resisted at all. Otherwise R is the constant 1.
 */
export function isCounted(version: VersionInput, bodyMass: Grams | null): boolean {
  if ((version.share ?? 0) > 0 && bodyMass === null) return false;
  const lightest = version.loads[0];
  return lightest !== undefined && externalLoad(lightest) + bodyPart(version.share, bodyMass) > 0;
}

/** R in grams: external load + ⌊share × body mass⌋; 1 for a version that is not counted. */
export function resistedLoad(version: VersionInput, load: MakeableLoad, bodyMass: Grams | null): number {
  return isCounted(version, bodyMass) ? externalLoad(load) + bodyPart(version.share, bodyMass) : 1;
}

/**
 * The equation that decides: the one chosen, but Epley's where Brzycki's has no meaning. R = 1 leaves Brzycki's
 * whole-number capacity no room to grow, and from 37 reps on its curve turns round.
 */
export function decidingEquation(chosen: Equation, counted: boolean, reps: Tenths): Equation {
  return chosen === 'brzycki' && counted && reps < BRZYCKI_TENTHS ? 'brzycki' : 'epley';
}

/** Epley: K = R₀ × (300 + n₀). Brzycki: R₀ itself, n₀ is kept beside it. `n₀` is `reps + reserve` in tenths. */
export function capacityOf(equation: Equation, capacity: CapacityInput, counted: boolean): number {
  const resisted = counted ? capacity.resisted : 1;
  return equation === 'epley' ? resisted * (EPLEY_TENTHS + capacity.reps) : resisted;
}

/** After one work week: ⌊K (10000 + g) / 10000⌋. */
export function gainedCapacity(capacity: number, gain: PerTenThousand): number {
  return Math.floor((capacity * (10000 + gain)) / 10000);
}

/**
 * Capacity in the next version of the chain: unchanged where both are counted and both shares are known, else
 * ⌊K × ratio⌋. 0 where nothing is derived: no ratio, only one of the two counted, or only one of them lifting a known
 * part of the body, when K would be divided by an R on another scale.
 */
export function carriedCapacity(
  capacity: number,
  from: { readonly share: PerMille | null; readonly counted: boolean },
  to: { readonly share: PerMille | null; readonly counted: boolean },
  ratio: PerMille | null,
): number {
  if (from.counted !== to.counted) return 0;
  if (from.counted && from.share !== null && to.share !== null) return capacity;
  if (from.counted && (from.share ?? to.share ?? 0) > 0) return 0;
  return ratio === null ? 0 : Math.floor((capacity * ratio) / 1000);
}

/**
 * Reps to failure at R, in tenths, at normal tempo. May be negative: then not one rep is predicted.
 * @param tested n₀ in tenths, used by Brzycki's only
 */
export function repsToFailure(equation: Equation, capacity: number, tested: Tenths, resisted: number): Tenths {
  return equation === 'epley'
    ? Math.floor((capacity - EPLEY_TENTHS * resisted) / resisted)
    : Math.floor((BRZYCKI_TENTHS * capacity - (BRZYCKI_TENTHS - tested) * resisted) / capacity);
}

/** Reps to failure with a slower tempo: ⌊RTF × τ⌋. */
export function slowedReps(reps: Tenths, factor: PerMille): Tenths {
  return Math.floor((reps * factor) / 1000);
}

/** The greatest R at which at least `needed` tenths of a rep to failure are predicted. */
export function heaviestFor(equation: Equation, capacity: number, tested: Tenths, needed: Tenths): number {
  return equation === 'epley'
    ? Math.floor(capacity / (EPLEY_TENTHS + needed))
    : Math.floor(((BRZYCKI_TENTHS - needed) * capacity) / (BRZYCKI_TENTHS - tested));
}

/** Tenths of a rep to failure at R `from` that go with `needed` at R `to`. */
export function repsThatEarn(equation: Equation, from: number, to: number, needed: Tenths): Tenths {
  return equation === 'epley'
    ? Math.ceil((to * (EPLEY_TENTHS + needed)) / from) - EPLEY_TENTHS
    : BRZYCKI_TENTHS - Math.floor(((BRZYCKI_TENTHS - needed) * from) / to);
}
