/** One rep more than the greatest set is always within the rule on volume. */
import type { Custom } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const volumeOneRep: Custom = {
  kind: 'custom',
  row: practiceRow('walk-volume-one-rep', 1, 'reps'),
};
