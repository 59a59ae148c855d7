/** A trial set replaces one of at least two. */
import type { Guard } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const trialTwoSetsGuard: Guard = {
  kind: 'guard',
  row: practiceRow('walk-trial-two-sets', 2, ''),
  permits: (at) => at.occurrence.sets >= 2,
  numbers: (at) => [{ name: 'sets', value: at.occurrence.sets, unit: '' }],
};
