/** For how many weeks back nothing is made harder. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const BREAK_HELD: Rule = {
  id: ruleId('break-held'),
  value: 2,
  unit: 'weeks',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
