/** On a weak estimate a big step is tried, never taken, until its trials have opened it. */
import { isTried } from '../walk/situation.js';
import type { Guard } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const weakNoRiseGuard: Guard = {
  kind: 'guard',
  row: practiceRow('walk-weak-no-rise', 0, ''),
  permits: (at, next) => !at.ground.weak || isTried(at.ground, next),
  numbers: (at) => [{ name: 'reps and reserve', value: at.ground.tested, unit: 'tenths' }],
};
