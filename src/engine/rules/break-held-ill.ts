/** For how many weeks after a shorter illness nothing is made harder. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const BREAK_HELD_ILL: Rule = {
  id: ruleId('break-held-ill'),
  value: 1,
  unit: 'weeks',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
