/** By how many sets a week one side may be ahead of the other before it is told. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const AUDIT_SIDE_SIDE: Rule = {
  id: ruleId('audit-side-side'),
  value: 0,
  unit: 'sets',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
