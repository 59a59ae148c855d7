/** A small step asks for one occurrence at the top of the range with the asked reserve. */
import type { Guard } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const earnedOnceGuard: Guard = {
  kind: 'guard',
  row: practiceRow('walk-earned-once', 1, ''),
  permits: (at) => at.earned >= 1,
  numbers: (at) => [
    { name: 'earned', value: at.earned, unit: '' },
    { name: 'needed', value: 1, unit: '' },
  ],
};
