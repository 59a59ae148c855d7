/** By how much one tap makes a rest longer on the phone. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const REST_LONGER: Rule = {
  id: ruleId('rest-longer'),
  value: 30,
  unit: 's',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-29',
};
