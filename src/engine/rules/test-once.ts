/** An exercise is tested so often in one week: at the start of a block, and again at its end. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const TEST_ONCE: Rule = {
  id: ruleId('test-once'),
  value: 1,
  unit: 'tests',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
