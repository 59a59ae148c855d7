/** Where nothing in the range leaves the floor: the load held, with up to two reps fewer than the range. */
import { fallbacksAt } from '../walk/fallback.js';
import { bottomOf, predictedAt } from '../walk/situation.js';
import type { Fall } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const fewerReps: Fall = {
  kind: 'fall',
  row: practiceRow('walk-fewer-reps', 2, 'reps'),
  turn: 1,
  named: 'fewer-reps',
  offers: (at) => {
    const bottom = bottomOf(at);
    const { version, load, tempo } = at.place;
    return fallbacksAt(at, at.place, predictedAt(at, version, load, tempo), Math.max(1, bottom - 2), bottom - 1);
  },
};
