/** Whether a load that was made up is no heavier than one the coach named. */
import type { MakeableLoad } from '../../model/kit.js';
import type { Grams } from '../../model/quantity.js';

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
