/** Most minutes a composed warm-up may take. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const WARM_UP_MOST: Rule = {
  id: ruleId('warm-up-most'),
  value: 8,
  unit: 'minutes',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
