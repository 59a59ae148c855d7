/** What a short version keeps of the warm-up, at most. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SHORT_WARM_UP: Rule = {
  id: ruleId('short-warm-up'),
  value: 3,
  unit: 'minutes',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
