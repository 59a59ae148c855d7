/** How long after pain was said nothing is made harder. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PAIN_HOLD_DAYS: Rule = {
  id: ruleId('pain-hold-days'),
  value: 14,
  unit: 'days',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
