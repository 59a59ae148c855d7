/** With a medicine that thins the blood: avoid impact, and take care where balance is asked. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const THINS_THE_BLOOD: Rule = {
  id: ruleId('thins-the-blood'),
  value: 2,
  unit: 'cautions',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
