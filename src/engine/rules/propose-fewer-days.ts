/** Few of the planned sessions done in so many weeks running: talk about days, or about another programme. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PROPOSE_FEWER_DAYS: Rule = {
  id: ruleId('propose-fewer-days'),
  value: 3,
  unit: 'weeks',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
