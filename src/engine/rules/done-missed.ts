/** After a set below the range the row begins with the last load that kept to it, else so many loads lighter; nothing is earned. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const DONE_MISSED: Rule = {
  id: ruleId('done-missed'),
  value: 1,
  unit: 'loads',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
