/** A test from before a birth says nothing any longer: a feeler set, from light. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const BIRTH_TEST: Rule = {
  id: ruleId('birth-test'),
  value: 1,
  unit: 'tests',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
