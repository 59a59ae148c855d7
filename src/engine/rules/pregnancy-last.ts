/** No session is planned later than so many days before the day the child is due. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PREGNANCY_LAST: Rule = {
  id: ruleId('pregnancy-last'),
  value: 0,
  unit: 'days',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
