/** One-sided work tested on one side only rests on that side, weakly, and is told. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const ONE_SIDE_TESTED: Rule = {
  id: ruleId('one-side-tested'),
  value: 1,
  unit: 'sides',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
