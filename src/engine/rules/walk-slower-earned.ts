/** A slower tempo is earned twice. */
import type { Guard } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const slowerEarnedGuard: Guard = {
  kind: 'guard',
  row: practiceRow('walk-slower-earned', 2, ''),
  permits: (at) => at.earned >= 2,
  numbers: (at) => [
    { name: 'earned', value: at.earned, unit: '' },
    { name: 'needed', value: 2, unit: '' },
  ],
};
