/** An easy week repeats the last work option with fewer reps and more in reserve. */
import type { Custom } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const easyWeek: Custom = {
  kind: 'custom',
  row: practiceRow('walk-easy-week', 0, ''),
};
