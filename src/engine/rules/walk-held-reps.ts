/** While held, no more reps than were last done before. */
import type { Limit } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const heldRepsLimit: Limit = {
  kind: 'limit',
  row: practiceRow('walk-held-reps', 0, 'reps'),
  weeks: 'both',
  most: (at) => at.occurrence.held?.maxReps ?? Number.MAX_SAFE_INTEGER,
};
