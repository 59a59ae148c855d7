/** No more reps in an easy week than in the last work week. */
import type { Limit } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const easyCapLimit: Limit = {
  kind: 'limit',
  row: practiceRow('walk-easy-cap', 0, 'reps'),
  weeks: 'easy',
  most: (at) => at.lastWork?.reps ?? Number.MAX_SAFE_INTEGER,
};
