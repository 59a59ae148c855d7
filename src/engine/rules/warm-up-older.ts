/** Length of the warm-up for an older client, or with a caution on holding the breath, as blood pressure asks. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const WARM_UP_OLDER: Rule = {
  id: ruleId('warm-up-older'),
  value: 8,
  unit: 'minutes',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
