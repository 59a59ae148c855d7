/** A review date returns nothing by itself: told before it and after it, up to this many days past the block. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const CAUTION_REVIEW: Rule = {
  id: ruleId('caution-review'),
  value: 0,
  unit: 'days',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
