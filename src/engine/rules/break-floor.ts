/** Reps in reserve not gone below in the first weeks back. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const BREAK_FLOOR: Rule = {
  id: ruleId('break-floor'),
  value: 40,
  unit: 'tenths',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
