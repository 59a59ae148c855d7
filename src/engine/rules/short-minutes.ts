/** Length of the short version of a session, at most. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SHORT_MINUTES: Rule = {
  id: ruleId('short-minutes'),
  value: 10,
  unit: 'minutes',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
