/** Most minutes it may take for those of `warm-up-older`. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const WARM_UP_OLDER_MOST: Rule = {
  id: ruleId('warm-up-older-most'),
  value: 10,
  unit: 'minutes',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
