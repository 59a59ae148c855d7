/** The same other bell as the heaviest of the work of a pattern, in so many sessions running: it is the main bell now. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PROPOSE_MAIN_BELL: Rule = {
  id: ruleId('propose-main-bell'),
  value: 3,
  unit: 'sessions',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
