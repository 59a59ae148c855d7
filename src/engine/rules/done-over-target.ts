/** So much more in reserve than asked, said in two consecutive occurrences, has earned the next step. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const DONE_OVER_TARGET: Rule = {
  id: ruleId('done-over-target'),
  value: 20,
  unit: 'tenths',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
