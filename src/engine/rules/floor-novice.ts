/** Reps in reserve a novice does not go below. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const FLOOR_NOVICE: Rule = {
  id: ruleId('floor-novice'),
  value: 30,
  unit: 'tenths',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
