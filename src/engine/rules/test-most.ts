/** A test set goes no further than this many reps above the top of the row's range. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const TEST_MOST: Rule = {
  id: ruleId('test-most'),
  value: 5,
  unit: 'reps',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
