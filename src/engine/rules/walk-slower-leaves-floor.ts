/** A slower tempo is open when some reps of the range leave the floor. */
import type { Guard } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const slowerLeavesFloorGuard: Guard = {
  kind: 'guard',
  row: practiceRow('walk-slower-leaves-floor', 0, 'tenths'),
  permits: (at, next) => next.predicted >= 10 * at.ground.input.bottom + at.occurrence.floor,
  numbers: (at, next) => [
    { name: 'predicted', value: next.predicted, unit: 'tenths' },
    { name: 'bottom', value: at.ground.input.bottom, unit: 'reps' },
    { name: 'floor', value: at.occurrence.floor, unit: 'tenths' },
  ],
};
