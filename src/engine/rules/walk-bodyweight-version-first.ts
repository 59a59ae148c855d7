/** A bodyweight row comes to a harder version before slower tempi. */
import type { Custom } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const bodyweightVersionFirst: Custom = {
  kind: 'custom',
  row: practiceRow('walk-bodyweight-version-first', 0, ''),
};
