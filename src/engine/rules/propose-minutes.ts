/** So many sessions running that took longer than planned: talk about minutes, rests or rows. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PROPOSE_MINUTES: Rule = {
  id: ruleId('propose-minutes'),
  value: 3,
  unit: 'sessions',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
