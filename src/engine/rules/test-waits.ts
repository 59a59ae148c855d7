/** So many tests in gentle weeks, the first weeks of a first block, a pregnancy, the weeks after a birth or with a vertebral fracture, and at the start of a moderate plan; the coach is told. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const TEST_WAITS: Rule = {
  id: ruleId('test-waits'),
  value: 0,
  unit: 'tests',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
