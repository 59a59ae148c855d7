/** Within so many days of a birth nothing is planned before a licensed person has looked and allowed exercise. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const BIRTH_CHECK: Rule = {
  id: ruleId('birth-check'),
  value: 182,
  unit: 'days',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
