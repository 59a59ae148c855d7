/** Weeks without a mark that the coach has not written down are proposed as a break away; what it was, the coach knows. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PROPOSE_BREAK: Rule = {
  id: ruleId('propose-break'),
  value: 1,
  unit: 'breaks',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
