/** By how much a break too short for any other rule changes the plan: the next session is simply the next. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const MISSED_SESSION: Rule = {
  id: ruleId('missed-session'),
  value: 0,
  unit: 'sets',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
