/** Of equally near ones, the heavier. */
import type { Preference } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const heavierFirst: Preference = {
  kind: 'preference',
  row: practiceRow('walk-heavier-first', 0, ''),
  compare: (_at, a, b) => b.external - a.external,
};
