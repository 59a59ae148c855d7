/** Pain of this degree, or a sign of alarm, in an exercise that needs a sign-off takes the sign-off back until it is passed again or cleared. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PAIN_SIGN_OFF: Rule = {
  id: ruleId('pain-sign-off'),
  value: 4,
  unit: 'of 10',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
