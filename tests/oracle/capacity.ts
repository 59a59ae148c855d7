/**
 * Reps to failure, a second time: resisted load, capacity from week to week and from version to version. Exact, in
 * integers of any size. What is done with the prediction belongs to `walk.ts`.
 *
 * Readings of points on which the definition is silent (C for capacity):
 * C1 The external load of a set is everything held: a pair of 12s resists with 24, though it is printed as 12 a hand.
 * C2 The capacity of the strand is that of the version it starts in; other versions are reached link by link from
 *    there, after the week's gain, each link rounded down. Coming back to a version gives back its own capacity.
 * C3 "Both shares are known" needs numbers behind them: a share above 0 without body mass on file is not known.
 * C4 Where a link goes by ratio, R goes on being counted as in the version the ratio speaks from: K and R are on one
 *    scale or the quotient means nothing. A link with neither shares nor ratio cannot be walked.
 * C5 A share that is not written counts as none; R is never below 1 (a body alone with no share is the constant 1).
 * C6 Brzycki carries R₀ where Epley carries K: it is R₀ that is raised by g and multiplied by a ratio.
 * C7 Gain is counted in work weeks of the block that end before the week of the occurrence.
 */
import type { LoadJson, Option, StrandJson } from './strand-json.js';

/** Rounds towards minus infinity. */
export function floorDivide(a: bigint, b: bigint): bigint {
  const quotient = a / b;
  return a % b !== 0n && a < 0n !== b < 0n ? quotient - 1n : quotient;
}

/** Grams in both hands together, or on the body. */
export const external = (load: LoadJson): number => load.pieces.reduce((sum, piece) => sum + piece.grams, 0);

export function loadsOf(strand: StrandJson, version: number): readonly LoadJson[] {
  const one = strand.versions[version];
  if (one === undefined) return [];
  return one.loads.filter((load) => one.signedOffTo === null || load.grams <= one.signedOffTo);
}

export const findLoad = (strand: StrandJson, option: Option): LoadJson | undefined =>
  loadsOf(strand, option.version).find((load) => load.grams === option.load);

interface Scale {
  /** K for Epley, R₀ for Brzycki. */
  readonly amount: bigint;
  /** The share by which R is counted. */
  readonly share: number | null;
}

function amountInWeek(strand: StrandJson, week: number): bigint | undefined {
  if (strand.capacity === null) return undefined;
  const { resisted, reps } = strand.capacity;
  let amount = BigInt(resisted) * (strand.equation === 'epley' ? BigInt(300 + reps) : 1n);
  for (const past of strand.weeks) {
    if (past.week < week && !past.easy) amount = floorDivide(amount * BigInt(10_000 + strand.gain), 10_000n);
  }
  return amount;
}

function scaleOf(strand: StrandJson, version: number, week: number): Scale | undefined {
  const from = strand.start?.version;
  const amount = amountInWeek(strand, week);
  if (from === undefined || amount === undefined) return undefined;
  let scale: Scale = { amount, share: strand.versions[from]?.share ?? null };
  const way = version > from ? 1 : -1;
  for (let at = from; at !== version; at += way) {
    const here = strand.versions[at];
    const there = strand.versions[at + way];
    if (here === undefined || there === undefined) return undefined;
    const ratio = way > 0 ? here.toHarder : here.toEasier;
    const isKnown = (share: number | null) => share === 0 || (share !== null && strand.bodyMass !== null);
    if (isKnown(scale.share) && isKnown(here.share) && isKnown(there.share)) scale = { ...scale, share: there.share };
    else if (ratio !== null) scale = { amount: floorDivide(scale.amount * BigInt(ratio), 1000n), share: scale.share };
    else return undefined;
  }
  return scale;
}

/** R is a constant: nothing follows from one load about another. */
export function loadsSayNothing(strand: StrandJson, version: number, week: number): boolean {
  const share = scaleOf(strand, version, week)?.share ?? null;
  return share !== null && share > 0 && strand.bodyMass === null;
}

/** Resisted load in grams. */
export function resisted(strand: StrandJson, option: Option, week: number): bigint | undefined {
  const load = findLoad(strand, option);
  const scale = scaleOf(strand, option.version, week);
  if (load === undefined || scale === undefined) return undefined;
  const share = scale.share ?? 0;
  if (share > 0 && strand.bodyMass === null) return 1n;
  const whole = BigInt(external(load)) + floorDivide(BigInt(share) * BigInt(strand.bodyMass ?? 0), 1000n);
  return whole > 0n ? whole : 1n;
}

/** Reps to failure in tenths, tempo counted; absent where nothing can be said. */
export function repsToFailure(strand: StrandJson, option: Option, week: number): number | undefined {
  const r = resisted(strand, option, week);
  const scale = scaleOf(strand, option.version, week);
  const tempo = strand.tempi[option.tempo];
  if (r === undefined || scale === undefined || tempo === undefined || strand.capacity === null) return undefined;
  if (scale.amount <= 0n) return undefined;
  const { amount } = scale;
  const plain =
    strand.equation === 'epley'
      ? floorDivide(amount - 300n * r, r)
      : floorDivide(370n * amount - BigInt(370 - strand.capacity.reps) * r, amount);
  return Number(floorDivide(plain * BigInt(tempo.factor), 1000n));
}
