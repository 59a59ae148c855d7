/** Only sets at the top of the range earn. */
import type { Earning } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const earnedAtTop: Earning = {
  kind: 'earning',
  row: practiceRow('walk-earned-at-top', 0, ''),
  holds: (at, reps) => reps >= at.ground.input.top,
};
