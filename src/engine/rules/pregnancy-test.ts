/** A test from before a pregnancy began is taken as weak, and lighter. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PREGNANCY_TEST: Rule = {
  id: ruleId('pregnancy-test'),
  value: 1,
  unit: 'tests',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
