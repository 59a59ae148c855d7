/** Sets on the clock and rising or falling reps keep to this many tempi: a slower one would not fit. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const CLOCK_ONE_TEMPO: Rule = {
  id: ruleId('clock-one-tempo'),
  value: 1,
  unit: 'tempi',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
