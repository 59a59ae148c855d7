/** While held, no more reps than were last done before. */
import type { Custom } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const heldReps: Custom = {
  kind: 'custom',
  row: practiceRow('walk-held-reps', 0, 'reps'),
};
