/** Can every load be made from what is in the house? By brute force over the pieces, not by the engine's lists. */
import type { PlanJson } from './plan-json.js';

export interface HeldLoad {
  readonly grams?: number | undefined;
  readonly band?: string | undefined;
  readonly mode: string;
  readonly pieces: readonly { readonly id: string; readonly grams: number }[];
}

interface Piece {
  readonly id: string;
  readonly kind: string;
  readonly grams: number;
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0);

/** Whether a list can be split into so many parts of equal sum. Slow and sure. */
export function splitsEvenly(masses: readonly number[], parts: number): boolean {
  const total = sum(masses);
  if (total % parts !== 0) return false;
  const room = Array.from({ length: parts }, () => total / parts);
  const place = (index: number): boolean => {
    const mass = masses[index];
    if (mass === undefined) return true;
    return room.some((free, part) => {
      if (free < mass) return false;
      room[part] = free - mass;
      const fits = place(index + 1);
      room[part] = free;
      return fits;
    });
  };
  return place(0);
}

/** One of each two equal plates; absent where some plate has no twin. */
function halfOf(plates: readonly Piece[]): readonly number[] | undefined {
  const masses = plates.map((plate) => plate.grams).sort((a, b) => a - b);
  const half: number[] = [];
  for (let i = 0; i < masses.length; i += 2) {
    const mass = masses[i];
    if (mass === undefined || mass !== masses[i + 1]) return undefined;
    half.push(mass);
  }
  return half;
}

/** A band is one item of the kit, by its name. */
function whyNoBand(load: HeldLoad, kit: PlanJson['inputs']['kit']): string | undefined {
  const [only, more] = load.pieces;
  if (only === undefined || more !== undefined) return `${load.pieces.length} bands at once`;
  const owned = kit.find((item) => item.id === only.id);
  if (owned?.kind !== 'band') return `${only.id} is no band`;
  if (load.mode !== 'band' && load.mode !== 'assisted') return `a band held ${load.mode}`;
  return owned.label === load.band ? undefined : `${only.id} is the ${owned.label} band, not the ${load.band}`;
}

/** What is wrong with a load; absent where it can be made from this kit. */
export function whyNotMakeable(load: HeldLoad, kit: PlanJson['inputs']['kit']): string | undefined {
  const ids = load.pieces.map((piece) => piece.id);
  if (new Set(ids).size !== ids.length) return 'an item is used twice';
  const pieces: Piece[] = [];
  for (const { id, grams } of load.pieces) {
    const owned = kit.find((item) => item.id === id);
    if (owned === undefined) return `nobody owns ${id}`;
    if ((owned.grams ?? 0) !== grams) return `${id} weighs ${owned.grams ?? 'nothing'} g, not ${grams} g`;
    pieces.push({ id, kind: owned.kind, grams });
  }
  const held = sum(pieces.map((piece) => piece.grams));
  if (load.band !== undefined) return whyNoBand(load, kit);
  if (load.grams === undefined) return 'neither grams nor a band';
  if (pieces.length === 0) return load.grams === 0 ? undefined : `${load.grams} g made of nothing`;
  const plates = pieces.filter((piece) => piece.kind === 'plate');
  const holders = pieces.filter((piece) => piece.kind === 'handle' || piece.kind === 'bar');
  const whole = pieces.filter((piece) => piece.kind === 'bell' || piece.kind === 'dumbbell');
  if (plates.length + holders.length + whole.length !== pieces.length) return 'a piece that is not a load';
  if (plates.length > 0 && holders.length === 0) return 'plates without a bar or handle';
  if (holders.length > 0 && whole.length > 0) return 'a bell on a bar';
  if (holders.length > 2 || whole.length > 2) return 'more than two hands hold';
  const half = halfOf(plates);
  if (half === undefined) return 'plates that are not the same on both ends';
  if (holders.length === 2) {
    const [one, other] = holders;
    if (one?.kind !== 'handle' || other?.kind !== 'handle' || one.grams !== other.grams) return 'two unlike handles';
    if (!splitsEvenly(half, 2)) return 'two handles that are not loaded alike';
  }
  const hands = Math.max(holders.length, whole.length);
  if (load.mode === 'per-hand') {
    if (hands === 2 && Math.floor(held / 2) !== load.grams)
      return `${held} g in two hands printed as ${load.grams} g each`;
    return hands === 1 && held !== load.grams ? `${held} g in one hand printed as ${load.grams} g` : undefined;
  }
  return held === load.grams ? undefined : `${held} g held, printed as ${load.grams} g`;
}

/** One bell named in kilograms and made in pounds, or the other way round, within one per cent of each other. */
export const isSameBell = (load: HeldLoad & { readonly label: string }, mass: number, top: number): boolean =>
  load.pieces.length < 3 && load.label.endsWith(' lb') === (top % 100 === 0) && 100 * mass <= 101 * top;

/** The most that one hand holds: what a sign-off speaks of. */
export function inOneHand(load: HeldLoad, kit: PlanJson['inputs']['kit']): number {
  const held = sum(load.pieces.map((piece) => piece.grams));
  const kinds = load.pieces.map((piece) => kit.find((item) => item.id === piece.id)?.kind);
  const whole = load.pieces.filter((_, index) => kinds[index] === 'bell' || kinds[index] === 'dumbbell');
  if (whole.length > 0) return Math.max(...whole.map((piece) => piece.grams));
  return kinds.filter((kind) => kind === 'handle').length === 2 ? held / 2 : held;
}

/**
 * Every mass a single item, an equal pair or a loaded bar of this kit can make, by how it is made.
 * @param most plates on one side of a handle
 */
export function listMasses(
  kit: PlanJson['inputs']['kit'],
  most = Number.POSITIVE_INFINITY,
): ReadonlyMap<string, ReadonlySet<number>> {
  const made = new Map<string, Set<number>>();
  const add = (how: string, grams: number) => made.set(how, (made.get(how) ?? new Set<number>()).add(grams));
  const of = (kind: string) => kit.flatMap((item) => (item.kind === kind && item.grams !== null ? [item.grams] : []));
  for (const kind of ['bell', 'dumbbell']) {
    const masses = of(kind);
    masses.forEach((grams, index) => {
      add(`one ${kind}`, grams);
      if (masses.indexOf(grams) !== index) add(`two ${kind}s`, grams);
    });
  }
  const pairs: number[] = [];
  const plates = of('plate').sort((a, b) => a - b);
  for (let i = 0; i + 1 < plates.length; i += 1) {
    const grams = plates[i];
    if (grams === undefined || grams !== plates[i + 1]) continue;
    pairs.push(2 * grams);
    i += 1;
  }
  /** By how many plates are on a side. */
  let loaded: ReadonlyMap<number, ReadonlySet<number>> = new Map([[0, new Set([0])]]);
  for (const pair of pairs) {
    const more = new Map<number, Set<number>>();
    for (const [count, sums] of loaded) {
      for (const grams of sums) {
        more.set(count, (more.get(count) ?? new Set<number>()).add(grams));
        more.set(count + 1, (more.get(count + 1) ?? new Set<number>()).add(grams + pair));
      }
    }
    loaded = more;
  }
  for (const kind of ['bar', 'handle']) {
    for (const empty of of(kind)) {
      for (const [count, sums] of loaded) {
        if (kind === 'handle' && count > most) continue;
        for (const on of sums) add(`one ${kind}`, empty + on);
      }
    }
  }
  return made;
}

/** How a load is made, in the words of `listMasses`; absent for ways that are not listed there. */
export function howMade(load: HeldLoad, kit: PlanJson['inputs']['kit']): string | undefined {
  const kinds = load.pieces.flatMap((piece) => kit.filter((item) => item.id === piece.id).map((item) => item.kind));
  const [first, second] = kinds.filter((kind) => kind !== 'plate');
  if (first === undefined) return undefined;
  if (second === undefined) return `one ${first}`;
  const [a, b] = load.pieces;
  return first === second && a?.grams === b?.grams && kinds.length === 2 ? `two ${first}s` : undefined;
}
