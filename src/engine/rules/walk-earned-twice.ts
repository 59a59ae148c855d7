/**
 * A big step or a harder version asks for two consecutive occurrences at the top with the asked reserve, or for the
 * trial set of the same step, once opened; or for trials of it that were done before.
 */
import { isTried, samePlace } from '../walk/situation.js';
import type { Guard } from '../walk/walk-rule.js';
import { sourcedRow } from './walk-row.js';

export const earnedTwiceGuard: Guard = {
  kind: 'guard',
  row: sourcedRow(
    'walk-earned-twice',
    2,
    '',
    'adapted',
    'two-for-two rule: two reps over the goal in the last set of two consecutive sessions',
    'common to strength handbooks; here: the top of the range with the asked reserve, twice',
  ),
  permits: (at, next) =>
    at.earned >= 2 ||
    (at.gate === 'open' && at.tried !== null && samePlace(at.tried.place, next)) ||
    isTried(at.ground, next),
  numbers: (at) => [
    { name: 'earned', value: at.earned, unit: '' },
    { name: 'needed', value: 2, unit: '' },
  ],
};
