/**
 * Reps to failure, a second time: resisted load, capacity from week to week and from version to version. Exact, in
 * integers of any size. What is done with the prediction belongs to `walk.ts`.
 *
 * Readings of points on which the definition is silent (C for capacity). Those marked † were first read otherwise
 * here, and taken over from the engine's own document once both walks stood: the definition allows either.
 * C1 The external load of a set is everything held: a pair of 12s resists with 24, though it is printed as 12 a hand.
 * C2 The capacity of the strand is that of the version it starts in; other versions are reached link by link from
 *    there, after the week's gain, each link rounded down. Coming back to a version gives back its own capacity.
 * C3 "Both shares are known" needs numbers behind them: a share above 0 without body mass on file is not known.
 * C4 K and R are on one scale or the quotient means nothing. So a ratio carries K only between two versions whose
 *    loads say nothing (†), or two of which neither counts body mass; from a version that counts it to one whose
 *    share is unwritten nothing is derived. A link with neither shares nor ratio cannot be walked.
 * C5 A share that is not written counts as none. Where R of the lightest load would be 0, or a share has no body mass
 *    to stand on, R is the constant 1 at every load of the version, and its loads say nothing about each other (†).
 * C6 Brzycki carries R₀ where Epley carries K: it is R₀ that is raised by g and multiplied by a ratio. Where R is the
 *    constant 1, or n₀ is 37 or more (its line ends there), Epley decides (†).
 * C7 Gain is counted in work weeks of the block that end before the week of the occurrence.
 */
import type { LoadJson, Option, StrandJson } from './strand-json.js';

/** Rounds towards minus infinity. */
function floorDivide(a: bigint, b: bigint): bigint {
  const quotient = a / b;
  return a % b !== 0n && a < 0n !== b < 0n ? quotient - 1n : quotient;
}

/** Grams in both hands together, or on the body. A load that does not say what it is made of is what it is called. */
export const external = (load: LoadJson): number =>
  load.pieces.length === 0 ? load.grams : load.pieces.reduce((sum, piece) => sum + piece.grams, 0);

/** Lightest first; what is above a sign-off is not listed in the first place. */
export const loadsOf = (strand: StrandJson, version: number): readonly LoadJson[] =>
  strand.versions[version]?.loads ?? [];

export const findLoad = (strand: StrandJson, option: Option): LoadJson | undefined =>
  loadsOf(strand, option.version).find((load) => load.grams === option.load);

/** R is the constant 1: nothing follows from one load about another. */
export function loadsSayNothing(strand: StrandJson, version: number): boolean {
  const one = strand.versions[version];
  const lightest = one?.loads[0];
  if (one === undefined || lightest === undefined) return true;
  const share = one.share ?? 0;
  return share > 0 ? strand.bodyMass === null : external(lightest) === 0;
}

/** Epley stands in where Brzycki's line has ended or R is a constant. */
function equationOf(strand: StrandJson): 'epley' | 'brzycki' {
  const { start, capacity } = strand;
  if (start === null || capacity === null || capacity.reps >= 370) return 'epley';
  return loadsSayNothing(strand, start.version) ? 'epley' : strand.equation;
}

/** K for Epley, R₀ for Brzycki, in the version tested. */
function amountInWeek(strand: StrandJson, week: number): bigint | undefined {
  if (strand.capacity === null || strand.start === null) return undefined;
  const { reps } = strand.capacity;
  const tested = loadsSayNothing(strand, strand.start.version) ? 1 : strand.capacity.resisted;
  let amount = BigInt(tested) * (equationOf(strand) === 'epley' ? BigInt(300 + reps) : 1n);
  for (const past of strand.weeks) {
    if (past.week < week && !past.easy) amount = floorDivide(amount * BigInt(10_000 + strand.gain), 10_000n);
  }
  return amount;
}

/** The same in another version; absent where nothing can be derived. */
function amountIn(strand: StrandJson, version: number, week: number): bigint | undefined {
  const from = strand.start?.version;
  let amount = amountInWeek(strand, week);
  if (from === undefined || amount === undefined) return undefined;
  const way = version > from ? 1 : -1;
  for (let at = from; at !== version; at += way) {
    const here = strand.versions[at];
    const there = strand.versions[at + way];
    if (here === undefined || there === undefined) return undefined;
    const [mute, alsoMute] = [loadsSayNothing(strand, at), loadsSayNothing(strand, at + way)];
    if (mute !== alsoMute) return undefined;
    if (!mute && here.share !== null && there.share !== null) continue;
    const countsBody = (share: number | null) => share !== null && share > 0;
    if (!mute && (countsBody(here.share) || countsBody(there.share))) return undefined;
    const ratio = way > 0 ? here.toHarder : here.toEasier;
    if (ratio === null) return undefined;
    amount = floorDivide(amount * BigInt(ratio), 1000n);
    if (amount <= 0n) return undefined;
  }
  return amount;
}

/** Resisted load in grams. */
export function resisted(strand: StrandJson, option: Option): bigint | undefined {
  const load = findLoad(strand, option);
  if (load === undefined) return undefined;
  if (loadsSayNothing(strand, option.version)) return 1n;
  const share = BigInt(strand.versions[option.version]?.share ?? 0);
  return BigInt(external(load)) + floorDivide(share * BigInt(strand.bodyMass ?? 0), 1000n);
}

/** Reps to failure in tenths, tempo counted; absent where nothing can be said. */
export function repsToFailure(strand: StrandJson, option: Option, week: number): number | undefined {
  const r = resisted(strand, option);
  const amount = amountIn(strand, option.version, week);
  const tempo = strand.tempi[option.tempo];
  if (r === undefined || amount === undefined || tempo === undefined || strand.capacity === null) return undefined;
  const plain =
    equationOf(strand) === 'epley'
      ? floorDivide(amount - 300n * r, r)
      : floorDivide(370n * amount - BigInt(370 - strand.capacity.reps) * r, amount);
  return Number(floorDivide(plain * BigInt(tempo.factor), 1000n));
}

/** What trials done before have opened. */
export const isTried = ({ tried, versions }: StrandJson, { version, load }: Option): boolean =>
  tried !== undefined && versions[version]?.exercise === tried.exercise && load === tried.grams;

export const isWeak = (strand: StrandJson): boolean =>
  strand.capacity !== null && (strand.capacity.weak || strand.capacity.reps > strand.rules.weakAbove);
