/** How long what the coach saw speaks for; older than that it says nothing. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SEEN_DAYS: Rule = {
  id: ruleId('seen-days'),
  value: 42,
  unit: 'days',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
