/** Above the gap of `side-gap-why` the stronger side does this many of its sets with the bell it was tested with. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SIDE_GAP_OWN_BELL: Rule = {
  id: ruleId('side-gap-own-bell'),
  value: 2,
  unit: 'sets',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
