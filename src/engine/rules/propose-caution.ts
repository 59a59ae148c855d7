/** Pain from the second band on, on so many days at one place, or once in the highest: a caution for that place. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PROPOSE_CAUTION: Rule = {
  id: ruleId('propose-caution'),
  value: 2,
  unit: 'reports',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
