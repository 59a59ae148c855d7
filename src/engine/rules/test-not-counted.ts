/** A row without reps to failure that the programme asks to test is told, and goes untested. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const TEST_NOT_COUNTED: Rule = {
  id: ruleId('test-not-counted'),
  value: 1,
  unit: 'rows',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
