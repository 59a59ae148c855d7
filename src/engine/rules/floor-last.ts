/** In a straight block floor work comes last, or first where that saves a trip; 0 leaves it as written. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const FLOOR_LAST: Rule = {
  id: ruleId('floor-last'),
  value: 1,
  unit: 'yes or no',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
