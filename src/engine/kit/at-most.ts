/** Which loads that were made up are no heavier than one the coach named. */
import type { MakeableLoad } from '../../model/kit.js';
import type { Grams } from '../../model/quantity.js';
import { isUnequal } from './hands.js';

/**
 * Pounds become whole grams item by item, so that several items may weigh a gram or two more than their sum in pounds:
 * 45 + 2 × 45 lb make 61,236 g, and 135 lb are 61,235 g. Half a gram for each item and for the figure is let pass,
 * and nothing for a single item.
 */
export function isAtMost(load: MakeableLoad, grams: Grams): boolean {
  return load.grams - roundingOf(load) <= grams;
}

function roundingOf({ pieces }: MakeableLoad): Grams {
  return pieces.length < 2 ? 0 : Math.floor((pieces.length + 1) / 2);
}

/**
 * The heaviest of `loads`, lightest first, up to `grams`: what a client was tested with, else an equal pair before an
 * unequal one.
 */
export function heaviestUpTo(loads: readonly MakeableLoad[], grams: Grams): MakeableLoad | null {
  const within = loads.filter((load) => isAtMost(load, grams));
  const heaviest = within.at(-1);
  if (heaviest === undefined || heaviest.grams === grams) return heaviest ?? null;
  return within.findLast((load) => load.grams > 0 && !isUnequal(load)) ?? heaviest;
}
