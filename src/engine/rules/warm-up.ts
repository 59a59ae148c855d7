/** Length of the warm-up. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const WARM_UP: Rule = {
  id: ruleId('warm-up'),
  value: 5,
  unit: 'minutes',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
