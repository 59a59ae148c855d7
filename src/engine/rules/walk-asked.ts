/** The asked reserve, less the tolerance. */
import type { Limit } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const askedLimit: Limit = {
  kind: 'limit',
  row: practiceRow('walk-asked', 0, 'tenths'),
  weeks: 'work',
  most: (at, _place, toFailure) => Math.floor((toFailure - at.occurrence.asked + at.ground.values.tolerance) / 10),
};
