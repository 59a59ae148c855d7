/** Of equally heavy ones, the one of more reps. */
import type { Preference } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const moreRepsFirst: Preference = {
  kind: 'preference',
  row: practiceRow('walk-more-reps-first', 0, ''),
  compare: (_at, a, b) => b.reps - a.reps,
};
