/** Every mass that can be put on the two sides of a bar or handle, the same plates on each side. */
import { compareIds, type KitItemId } from '../../model/identity.js';
import type { Grams } from '../../model/quantity.js';

export interface Plate {
  readonly id: KitItemId;
  readonly grams: Grams;
}

/** Plates on, over all the sides they are shared out to. */
export interface PlateSum {
  readonly grams: Grams;
  /** Heaviest first, then by id. */
  readonly plates: readonly Plate[];
}

/** More sums than this are refused: no home has them, and a list without end must not hold the planner up. */
export const MOST_SUMS = 2000;

interface Half {
  /** For one side. */
  readonly grams: Grams;
  /** How many of each mass on one side, in the order of `masses`. */
  readonly counts: readonly number[];
  readonly pieces: number;
}

/**
 * All sums over `sides` equal sides (2 for one bar or handle, 4 for a pair of handles), nothing on included,
 * lightest first. Of several ways to the same sum: the fewest plates, then the heaviest plates.
 * `null` when there are more than `MOST_SUMS`.
 * @param mostASide plates that one side holds
 */
export function sumPlates(
  plates: readonly Plate[],
  sides: 2 | 4,
  mostASide = Number.MAX_SAFE_INTEGER,
): readonly PlateSum[] | null {
  const byMass = new Map<Grams, Plate[]>();
  for (const plate of [...plates].sort((a, b) => compareIds(a.id, b.id))) {
    byMass.set(plate.grams, [...(byMass.get(plate.grams) ?? []), plate]);
  }
  const masses = [...byMass.keys()].sort((a, b) => b - a);
  let halves = new Map<Grams, Half>([[0, { grams: 0, counts: [], pieces: 0 }]]);
  for (const mass of masses) {
    const most = Math.floor((byMass.get(mass)?.length ?? 0) / sides);
    const next = new Map<Grams, Half>();
    for (const half of halves.values()) {
      for (let count = most; count >= 0; count -= 1) {
        const grams = half.grams + count * mass;
        const made = { grams, counts: [...half.counts, count], pieces: half.pieces + count };
        const known = next.get(grams);
        if (known === undefined || isPlainer(made, known)) next.set(grams, made);
      }
      if (next.size > MOST_SUMS) return null;
    }
    halves = next;
  }
  return [...halves.values()]
    .filter(({ pieces }) => pieces <= mostASide)
    .sort((a, b) => a.grams - b.grams)
    .map((half) => ({
      grams: half.grams * sides,
      plates: masses.flatMap((mass, i) => (byMass.get(mass) ?? []).slice(0, (half.counts[i] ?? 0) * sides)),
    }));
}

function isPlainer(a: Half, b: Half): boolean {
  if (a.pieces !== b.pieces) return a.pieces < b.pieces;
  const at = a.counts.findIndex((count, i) => count !== b.counts[i]);
  return at >= 0 && (a.counts[at] ?? 0) > (b.counts[at] ?? 0);
}
