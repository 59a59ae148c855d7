/** A next load is tried only while the load held can be done in its range. */
import { predictedAt, type Situation } from '../walk/situation.js';
import type { Guard } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const trialInRangeGuard: Guard = {
  kind: 'guard',
  row: practiceRow('walk-trial-in-range', 0, 'tenths'),
  permits: (at) => heldPrediction(at) >= 10 * at.ground.input.bottom + at.occurrence.floor,
  numbers: (at) => [
    { name: 'predicted', value: heldPrediction(at), unit: 'tenths' },
    { name: 'bottom', value: at.ground.input.bottom, unit: 'reps' },
    { name: 'floor', value: at.occurrence.floor, unit: 'tenths' },
  ],
};

function heldPrediction(at: Situation): number {
  return predictedAt(at, at.place.version, at.place.load, at.place.tempo);
}
