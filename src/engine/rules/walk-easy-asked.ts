/** The reserve an easy week asks, less the tolerance. */
import type { Limit } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const easyAskedLimit: Limit = {
  kind: 'limit',
  row: practiceRow('walk-easy-asked', 0, 'tenths'),
  weeks: 'easy',
  most: (at, _place, toFailure) => Math.floor((toFailure - at.occurrence.asked + at.ground.values.tolerance) / 10),
};
