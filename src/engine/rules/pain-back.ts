/** After what was left out for pain, or an alarm, is cleared: begun so many loads lighter than it was done last, and held as after pain. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PAIN_BACK: Rule = {
  id: ruleId('pain-back'),
  value: 1,
  unit: 'loads',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
