/** Capacity grows by g after each work week. */
import type { Custom } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const gain: Custom = {
  kind: 'custom',
  row: practiceRow('walk-gain', 0, 'per-ten-thousand'),
};
