/** Of what leaves the floor, the nearest to the asked reserve. */
import type { Preference } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const nearestAsked: Preference = {
  kind: 'preference',
  row: practiceRow('walk-nearest-asked', 0, ''),
  compare: (at, a, b) => {
    const { asked } = at.occurrence;
    const x = Math.abs(a.reserve - asked);
    const y = Math.abs(b.reserve - asked);
    return at.ground.habits.halfReps ? Math.floor((2 * x + 5) / 10) - Math.floor((2 * y + 5) / 10) : x - y;
  },
};
