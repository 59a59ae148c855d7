/** A row on the body alone, never tested and with nothing passed on to it, begins with the nearest easier version that was tested. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const BEGIN_TESTED: Rule = {
  id: ruleId('begin-tested'),
  value: 1,
  unit: 'versions',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
