/** Where nothing in the range leaves the floor, at normal tempo either: a lower load, in the range. */
import { fallbacksAt } from '../walk/fallback.js';
import { bottomOf, predictedAt, topOf } from '../walk/situation.js';
import type { Fall, Fallback } from '../walk/walk-rule.js';
import { atNormalTempo } from './walk-normal-tempo.js';
import { practiceRow } from './walk-row.js';

export const lowerLoad: Fall = {
  kind: 'fall',
  row: practiceRow('walk-lower-load', 0, ''),
  turn: 1,
  named: 'lower-load',
  offers: (at) => {
    const { version, load, tempo } = at.place;
    if (at.ground.footings[version]?.counted !== true) return [];
    if (at.ground.habits.tempoBeforeLoad && atNormalTempo(at).length > 0) return [];
    const offers: Fallback[] = [];
    for (let lower = load - 1; lower >= 0; lower -= 1) {
      const place = { version, load: lower, tempo };
      offers.push(...fallbacksAt(at, place, predictedAt(at, version, lower, tempo), bottomOf(at), topOf(at)));
    }
    return offers;
  },
};
