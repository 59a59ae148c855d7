/** With a medicine that lowers blood pressure: take care with what puts the head down, and come up slowly. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const LOWERS_BLOOD_PRESSURE: Rule = {
  id: ruleId('lowers-blood-pressure'),
  value: 1,
  unit: 'cautions',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
