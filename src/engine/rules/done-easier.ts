/** The easier version chosen for the work so many times running is begun with, else one load lighter; nothing is earned. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const DONE_EASIER: Rule = {
  id: ruleId('done-easier'),
  value: 2,
  unit: 'occurrences',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
