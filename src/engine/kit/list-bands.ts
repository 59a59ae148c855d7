/** The bands an exercise can be done with from one client's kit. Bands have an order and no mass. */
import type { KitItem, KitNeed, LoadMode } from '../../model/kit.js';
import type { BandLoad } from '../../model/ladder.js';

/**
 * The easiest to stretch first, one of each step; none where the exercise is not done with a band. Where a band
 * assists, the hardest to stretch is the easiest to work with: whoever plans with them turns the order round.
 */
export function listBands(kit: readonly KitItem[], need: KitNeed, mode: LoadMode): readonly BandLoad[] {
  if (mode !== 'band' && mode !== 'assisted') return [];
  if (!need.load.some(({ kind }) => kind === 'band')) return [];
  const owned = kit.flatMap((item) => (item.kind === 'band' ? [item] : []));
  return [...owned]
    .sort((a, b) => a.step - b.step)
    .filter((item, index, all) => index === 0 || all[index - 1]?.step !== item.step)
    .map(({ id, step, label }): BandLoad => {
      const printed = /\bband$/i.test(label) ? label : `${label} band`;
      return { band: label, step, mode, pieces: [{ id, grams: 0 }], label: printed };
    });
}
