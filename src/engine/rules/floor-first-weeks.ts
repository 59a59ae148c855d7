/** Reps in reserve not gone below in the first weeks of a first block. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const FLOOR_FIRST_WEEKS: Rule = {
  id: ruleId('floor-first-weeks'),
  value: 40,
  unit: 'tenths',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
