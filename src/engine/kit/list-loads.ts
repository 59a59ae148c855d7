/**
 * Every load an exercise can be done with from one client's kit, with the items that make it. Sign-offs, cautions
 * and rooms are not asked here.
 */
import type { KitItemId } from '../../model/identity.js';
import { compareIds } from '../../model/identity.js';
import type { KitItem, KitNeed, LoadKind, LoadMode, LoadNeed, MakeableLoad } from '../../model/kit.js';
import type { Grams, Mass, MassUnit, PerMille } from '../../model/quantity.js';
import { handsOf } from './hands.js';
import { labelOf, labelOfPair, labelOfSum } from './load-label.js';
import { type PlateSum, sumPlates } from './plate-sums.js';

interface Weight {
  readonly id: KitItemId;
  readonly kind: LoadKind;
  readonly mass: Mass;
}

export interface LoadList {
  /** Lightest first, no two of equal mass. */
  readonly loads: readonly MakeableLoad[];
  /** The plates make more sums than the planner lists. */
  readonly tooMany: boolean;
}

export interface LoadLimits {
  /** Most plates on one side of a dumbbell handle. */
  readonly platesASide: number;
  /** The heavier of two unequal items is above the lighter by at most this part of it. */
  readonly unlike: PerMille;
  /** An unequal pair within this part of the mass of an equal one is not listed. */
  readonly near: PerMille;
}

/** Equal pairs still go before unequal ones of the very same mass. */
const UNLIMITED: LoadLimits = {
  platesASide: Number.MAX_SAFE_INTEGER,
  unlike: Number.MAX_SAFE_INTEGER,
  near: 0,
};

/**
 * Loads for `need`, counted as `mode` says, lightest first. Of several ways to the same mass: the way the exercise
 * prefers, then the more equal pair or the fewest pieces, then the pieces' ids.
 *
 * A pair is two items of equal mass and kind; a pair of handles carries the same plates on all four sides. An
 * unequal pair is listed only where the need allows it, the two are not too unlike and no equal pair is near it, and counts per hand as half of both, rounded down: the
 * pieces say what is in either hand. A side of a dumbbell handle holds `platesASide` plates, a bar as many as there are. Counted per hand, one bell and a pair of them are not on one scale: only ways that
 * fill as many hands as the preferred one are listed. Bands are not loads in grams and are not listed.
 */
export function listLoads(
  kit: readonly KitItem[],
  need: KitNeed,
  mode: LoadMode,
  unit: MassUnit,
  limits: LoadLimits = UNLIMITED,
): LoadList {
  const weights = weightsOf(kit);
  const found: MakeableLoad[] = [];
  let tooMany = false;
  const [first] = need.load;
  for (const way of need.load) {
    if (mode === 'per-hand' && first !== undefined && handsOf(way) !== handsOf(first)) continue;
    const made = loadsOf(way, weights, mode, unit, limits);
    if (made === null) tooMany = true;
    else found.push(...made);
  }
  return { loads: keepFirstOfEach(found), tooMany };
}

function weightsOf(kit: readonly KitItem[]): readonly Weight[] {
  return kit
    .flatMap((item) => ('mass' in item ? [{ id: item.id, kind: item.kind, mass: item.mass }] : []))
    .sort((a, b) => a.mass.grams - b.mass.grams || compareIds(a.id, b.id));
}

/** The order within one way is the order of preference for one mass. */
function loadsOf(
  way: LoadNeed,
  weights: readonly Weight[],
  mode: LoadMode,
  unit: MassUnit,
  limits: LoadLimits,
): readonly MakeableLoad[] | null {
  const { platesASide } = limits;
  if (way.kind === 'band') return [];
  if (way.kind === 'bar') return plated('bar', weights, mode, unit, Number.MAX_SAFE_INTEGER);
  const fixed = weights.filter((item) => item.kind === way.kind);
  const handled = way.kind === 'dumbbell';
  if (way.count === 1) {
    const singles = fixed.map((item) => single(item, mode));
    if (!handled) return singles;
    const made = plated('handle', weights, mode, unit, platesASide);
    return made === null ? null : [...singles, ...made];
  }
  const made = handled ? platedPairs(weights, mode, unit, platesASide) : [];
  if (made === null) return null;
  const equal = [...equalPairs(fixed, mode), ...made];
  const others = way.unequal ? unequalPairs(fixed, mode, limits) : [];
  return [...equal, ...others.filter((pair) => !equal.some((one) => isNear(one, pair, limits)))];
}

const isNear = ({ grams }: MakeableLoad, other: MakeableLoad, { near }: LoadLimits): boolean =>
  Math.abs(grams - other.grams) * 1000 <= grams * near;

const piece = (item: Weight) => ({ id: item.id, grams: item.mass.grams });

function single(item: Weight, mode: LoadMode): MakeableLoad {
  return { grams: item.mass.grams, mode, pieces: [piece(item)], label: labelOf(item.mass) };
}

function equalPairs(items: readonly Weight[], mode: LoadMode): readonly MakeableLoad[] {
  return items.flatMap((a, i) => {
    const b = items[i + 1];
    const first = items.findIndex((item) => item.mass.grams === a.mass.grams) === i;
    if (b === undefined || !first || b.mass.grams !== a.mass.grams) return [];
    const grams = mode === 'per-hand' ? a.mass.grams : 2 * a.mass.grams;
    return [{ grams, mode, pieces: [piece(a), piece(b)], label: labelOfPair(labelOf(a.mass)) }];
  });
}

/** Of two pairs of one mass the more equal one is preferred; pairs too unlike are none. */
function unequalPairs(items: readonly Weight[], mode: LoadMode, { unlike }: LoadLimits): readonly MakeableLoad[] {
  const pairs = items.flatMap((a, i) =>
    items
      .slice(i + 1)
      .flatMap((b) => (a.mass.grams === b.mass.grams ? [] : [{ a, b, apart: b.mass.grams - a.mass.grams }])),
  );
  return pairs
    .filter(({ a, apart }) => apart * 1000 <= a.mass.grams * unlike)
    .sort((one, other) => one.apart - other.apart)
    .map(({ a, b }) => {
      const both = a.mass.grams + b.mass.grams;
      const grams = mode === 'per-hand' ? Math.floor(both / 2) : both;
      return { grams, mode, pieces: [piece(a), piece(b)], label: `${labelOf(a.mass)} + ${labelOf(b.mass)}` };
    });
}

function plated(
  kind: 'bar' | 'handle',
  weights: readonly Weight[],
  mode: LoadMode,
  unit: MassUnit,
  mostASide: number,
): readonly MakeableLoad[] | null {
  const bars = weights.filter((item) => item.kind === kind);
  if (bars.length === 0) return [];
  const sums = sumPlates(platesOf(weights), 2, mostASide);
  if (sums === null) return null;
  const loads = bars.flatMap((bar) =>
    sums.map((sum) => {
      const grams = bar.mass.grams + sum.grams;
      const label = labelOfSum([bar.mass, ...massesOf(sum, weights)], 1, unit);
      return { grams, mode, pieces: [piece(bar), ...sum.plates], label };
    }),
  );
  return loads.sort(byPieces);
}

/** Two handles of equal mass, the same plates on all four sides. */
function platedPairs(
  weights: readonly Weight[],
  mode: LoadMode,
  unit: MassUnit,
  mostASide: number,
): readonly MakeableLoad[] | null {
  const pairs = equalPairs(
    weights.filter((item) => item.kind === 'handle'),
    'per-hand',
  );
  if (pairs.length === 0) return [];
  const sums = sumPlates(platesOf(weights), 4, mostASide);
  if (sums === null) return null;
  const loads = pairs.flatMap((pair) =>
    sums.map((sum) => {
      const handles = weights.filter((item) => pair.pieces.some(({ id }) => id === item.id));
      const hand: Grams = pair.grams + sum.grams / 2;
      const grams = mode === 'per-hand' ? hand : 2 * hand;
      const masses = [...handles.map((item) => item.mass), ...massesOf(sum, weights)];
      return { grams, mode, pieces: [...pair.pieces, ...sum.plates], label: labelOfPair(labelOfSum(masses, 2, unit)) };
    }),
  );
  return loads.sort(byPieces);
}

function massesOf(sum: PlateSum, weights: readonly Weight[]): readonly Mass[] {
  const byId = new Map(weights.map((item) => [item.id, item.mass]));
  return sum.plates.flatMap(({ id }) => byId.get(id) ?? []);
}

function platesOf(weights: readonly Weight[]) {
  return weights.filter((item) => item.kind === 'plate').map(piece);
}

function byPieces(a: MakeableLoad, b: MakeableLoad): number {
  return a.pieces.length - b.pieces.length || compareIds(idsOf(a), idsOf(b));
}

const idsOf = (load: MakeableLoad): string => load.pieces.map((p) => p.id).join(' ');

function keepFirstOfEach(loads: readonly MakeableLoad[]): readonly MakeableLoad[] {
  const first = new Map<Grams, MakeableLoad>();
  for (const load of loads) if (!first.has(load.grams)) first.set(load.grams, load);
  return [...first.values()].sort((a, b) => a.grams - b.grams);
}
