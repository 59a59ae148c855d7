/** Where no reserve was said, the reps done and what the plan itself predicted after them are taken, weakly; 0 takes nothing. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const DONE_UNSAID: Rule = {
  id: ruleId('done-unsaid'),
  value: 1,
  unit: 'yes or no',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
