/** An open trial closes when the option changes by any other way. */
import type { Custom } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const trialCloses: Custom = {
  kind: 'custom',
  row: practiceRow('walk-trial-closes', 0, ''),
};
