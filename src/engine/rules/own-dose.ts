/** Beside a client’s own work in an exercise, neither an easier version nor a composed warm-up or cool-down asks more of it; 0 leaves it. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const OWN_DOSE: Rule = {
  id: ruleId('own-dose'),
  value: 1,
  unit: 'yes or no',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
