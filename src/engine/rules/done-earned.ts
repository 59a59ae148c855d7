/** Most that marks earn: occurrences running at the top of the range with the asked reserve, or as planned where none was said. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const DONE_EARNED: Rule = {
  id: ruleId('done-earned'),
  value: 2,
  unit: 'occurrences',
  source: 'two-for-two rule: two reps over the goal in the last set of two consecutive sessions',
  locator: 'common to strength handbooks; here as the walk counts it, from marks',
  standing: 'adapted',
  date: '2026-11-28',
};
