/** Reps in reserve that are never gone below. */
import type { Limit } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const floorLimit: Limit = {
  kind: 'limit',
  row: practiceRow('walk-floor', 20, 'tenths'),
  weeks: 'both',
  most: (at, _place, toFailure) => Math.floor((toFailure - at.occurrence.floor) / 10),
};
