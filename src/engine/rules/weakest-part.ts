/** A combination never tested itself rests on its weakest part, weakly; no load is used that a part was not tested with. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const WEAKEST_PART: Rule = {
  id: ruleId('weakest-part'),
  value: 1,
  unit: 'parts',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
