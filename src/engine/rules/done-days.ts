/** Marks older than this say nothing of what can be lifted now. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const DONE_DAYS: Rule = {
  id: ruleId('done-days'),
  value: 42,
  unit: 'days',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
