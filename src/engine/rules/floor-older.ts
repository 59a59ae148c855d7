/** Reps in reserve not gone below from the age in `older-from`. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const FLOOR_OLDER: Rule = {
  id: ruleId('floor-older'),
  value: 30,
  unit: 'tenths',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
