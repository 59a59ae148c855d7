/** Of another medicine the coach asks what it changes in training. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const OTHER_MEDICINE: Rule = {
  id: ruleId('other-medicine'),
  value: 1,
  unit: 'questions',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
