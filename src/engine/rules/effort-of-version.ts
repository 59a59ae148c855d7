/** An effort that is not for the version’s way of working is dropped: so many are kept, and the curve decides. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const EFFORT_OF_VERSION: Rule = {
  id: ruleId('effort-of-version'),
  value: 0,
  unit: 'efforts',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
