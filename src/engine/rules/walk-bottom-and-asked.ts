/**
 * A load is won back when the bottom of the range is predicted at the asked reserve, less the tolerance, and never
 * below the floor.
 */
import type { Guard } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const bottomAndAskedGuard: Guard = {
  kind: 'guard',
  row: practiceRow('walk-bottom-and-asked', 0, 'tenths'),
  permits: (at, next) =>
    next.predicted >=
    10 * at.ground.input.bottom + Math.max(at.occurrence.floor, at.occurrence.asked - at.ground.values.tolerance),
  numbers: (at, next) => [
    { name: 'predicted', value: next.predicted, unit: 'tenths' },
    { name: 'bottom', value: at.ground.input.bottom, unit: 'reps' },
    { name: 'asked', value: at.occurrence.asked, unit: 'tenths' },
    { name: 'tolerance', value: at.ground.values.tolerance, unit: 'tenths' },
    { name: 'floor', value: at.occurrence.floor, unit: 'tenths' },
  ],
};
