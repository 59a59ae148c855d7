/** Where an easy week cannot leave the asked reserve it does the fewest reps it may. */
import type { Custom } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const easyLeast: Custom = {
  kind: 'custom',
  row: practiceRow('walk-easy-least', 0, ''),
};
