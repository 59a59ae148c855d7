/** So many estimates of an exercise and side, and only weak ones: test it. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PROPOSE_TEST_WEAK: Rule = {
  id: ruleId('propose-test-weak'),
  value: 3,
  unit: 'occurrences',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
