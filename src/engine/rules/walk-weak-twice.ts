/** On a weak estimate even a small step is earned twice. */
import type { Guard } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const weakTwiceGuard: Guard = {
  kind: 'guard',
  row: practiceRow('walk-weak-twice', 2, ''),
  permits: (at) => !at.ground.weak || at.earned >= 2,
  numbers: (at) => [
    { name: 'earned', value: at.earned, unit: '' },
    { name: 'needed', value: 2, unit: '' },
  ],
};
