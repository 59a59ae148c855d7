/** An exercise refused only for asking much of what wants care is done in an easier way of its own that answers every
 * cause. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const WAY_UNLOCKS: Rule = {
  id: ruleId('way-unlocks'),
  value: 1,
  unit: 'ways',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
