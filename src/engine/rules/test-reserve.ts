/** Good reps left at which a test set stops; a higher floor counts instead. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const TEST_RESERVE: Rule = {
  id: ruleId('test-reserve'),
  value: 10,
  unit: 'tenths',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
