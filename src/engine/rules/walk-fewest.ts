/** Where the asked reserve or the volume cannot be kept in the range, its fewest reps that leave the floor. */
import type { Custom } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const fewest: Custom = {
  kind: 'custom',
  row: practiceRow('walk-fewest', 0, ''),
};
