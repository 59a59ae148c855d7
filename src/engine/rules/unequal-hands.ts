/** Two unequal bells change hands after so many sets, so that either side holds the heavier one. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const UNEQUAL_HANDS: Rule = {
  id: ruleId('unequal-hands'),
  value: 1,
  unit: 'sets',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
