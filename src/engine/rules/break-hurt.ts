/** Hurt, and away for this many days or more: the first weeks back are gentle. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const BREAK_HURT: Rule = {
  id: ruleId('break-hurt'),
  value: 1,
  unit: 'days',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
