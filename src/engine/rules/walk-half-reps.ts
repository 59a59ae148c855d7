/** Reserves are compared in half reps: closer is not told apart. */
import type { Custom } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const halfReps: Custom = {
  kind: 'custom',
  row: practiceRow('walk-half-reps', 5, 'tenths'),
};
