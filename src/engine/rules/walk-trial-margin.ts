/** A trial is offered when at least so many reps above the floor are predicted. */
import type { Guard } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const trialMarginGuard: Guard = {
  kind: 'guard',
  row: practiceRow('walk-trial-margin', 30, 'tenths'),
  permits: (at, next) => next.predicted - at.occurrence.floor >= at.ground.values.trialMargin,
  numbers: (at, next) => [
    { name: 'predicted', value: next.predicted, unit: 'tenths' },
    { name: 'floor', value: at.occurrence.floor, unit: 'tenths' },
    { name: 'margin', value: at.ground.values.trialMargin, unit: 'tenths' },
  ],
};
