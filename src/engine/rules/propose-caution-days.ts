/** The days within which pain is counted towards a caution, and after which the coach looks at it again. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PROPOSE_CAUTION_DAYS: Rule = {
  id: ruleId('propose-caution-days'),
  value: 14,
  unit: 'days',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
