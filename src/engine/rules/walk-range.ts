/** Reps stay in the row's range: never more than its top. */
import type { Custom } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const range: Custom = {
  kind: 'custom',
  row: practiceRow('walk-range', 0, 'reps'),
};
