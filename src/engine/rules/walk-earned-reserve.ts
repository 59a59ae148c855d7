/** Only sets that leave the asked reserve, less the tolerance, earn. */
import type { Earning } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const earnedReserve: Earning = {
  kind: 'earning',
  row: practiceRow('walk-earned-reserve', 0, ''),
  holds: (at, _reps, reserve) => reserve >= at.occurrence.asked - at.ground.values.tolerance,
};
