/** Reps in reserve that nobody training without a coach goes below. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const FLOOR_ALONE: Rule = {
  id: ruleId('floor-alone'),
  value: 20,
  unit: 'tenths',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
