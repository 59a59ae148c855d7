/** A changed option has nothing earned yet. */
import type { Custom } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const earnedReset: Custom = {
  kind: 'custom',
  row: practiceRow('walk-earned-reset', 0, ''),
};
