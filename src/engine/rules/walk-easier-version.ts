/** Where no load of this version leaves the floor: the nearest easier version that does, at no heavier a load. */
import { fallbacksAt } from '../walk/fallback.js';
import { bottomOf, externalAt, predictedAt, type Situation, topOf } from '../walk/situation.js';
import type { Fall, Fallback } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const easierVersion: Fall = {
  kind: 'fall',
  row: practiceRow('walk-easier-version', 0, ''),
  turn: 2,
  named: 'easier-version',
  offers: (at) => {
    const held = externalAt(at.ground, at.place);
    for (let version = at.place.version - 1; version >= 0; version -= 1) {
      const offers = offersOf(at, version, held);
      if (offers.length > 0) return offers;
    }
    return [];
  },
};

function offersOf(at: Situation, version: number, held: number): readonly Fallback[] {
  const footing = at.ground.footings[version];
  if (footing === undefined || (at.week.capacities[version] ?? 0) <= 0) return [];
  const offers: Fallback[] = [];
  footing.external.forEach((external, load) => {
    const may = footing.counted ? external <= held || load === 0 : external === held;
    if (!may) return;
    offers.push(
      ...fallbacksAt(at, { version, load, tempo: 0 }, predictedAt(at, version, load, 0), bottomOf(at), topOf(at)),
    );
  });
  return offers;
}
