/** An easy set is at most two reps below the range. */
import type { Custom } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const easyDepth: Custom = {
  kind: 'custom',
  row: practiceRow('walk-easy-depth', 2, 'reps'),
};
