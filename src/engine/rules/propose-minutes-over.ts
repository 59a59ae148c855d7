/** How much longer than planned a session may take before it counts as longer. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PROPOSE_MINUTES_OVER: Rule = {
  id: ruleId('propose-minutes-over'),
  value: 100,
  unit: 'per-mille',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
