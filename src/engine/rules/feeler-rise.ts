/** How many loads above the one just felt a feeler set may lead to. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const FEELER_RISE: Rule = {
  id: ruleId('feeler-rise'),
  value: 1,
  unit: 'loads',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
