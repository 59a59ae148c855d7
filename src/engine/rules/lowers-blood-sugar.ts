/** With a medicine that lowers blood sugar: something sweet within reach, as the clinic advised. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const LOWERS_BLOOD_SUGAR: Rule = {
  id: ruleId('lowers-blood-sugar'),
  value: 1,
  unit: 'cautions',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
