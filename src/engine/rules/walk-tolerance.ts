/** By how much the asked reserve may be missed. */
import type { Custom } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const tolerance: Custom = {
  kind: 'custom',
  row: practiceRow('walk-tolerance', 2, 'tenths'),
};
