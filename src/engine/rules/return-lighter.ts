/** How many loads lighter than the last good one a row starts after a break of `strength-kept`. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const RETURN_LIGHTER: Rule = {
  id: ruleId('return-lighter'),
  value: 1,
  unit: 'loads',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
