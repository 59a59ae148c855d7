/** Where the lightest load leaves too little at the bottom of the range, the row begins with the nearest easier version that does not. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const BEGIN_LIGHTER: Rule = {
  id: ruleId('begin-lighter'),
  value: 1,
  unit: 'versions',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
