/** A trial on a weak estimate asks at most this many reps. */
import type { Custom } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const weakTrial: Custom = {
  kind: 'custom',
  row: practiceRow('walk-weak-trial', 3, 'reps'),
};
