/** Without logs the first work occurrence is exempt from the rule on volume: there is nothing to compare it with. */
import type { Custom } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const volumeFirst: Custom = {
  kind: 'custom',
  row: practiceRow('walk-volume-first', 0, ''),
};
