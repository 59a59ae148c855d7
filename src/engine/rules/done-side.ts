/** Each side is known by its own marks, and a gap between them is told as one between tests is. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const DONE_SIDE: Rule = {
  id: ruleId('done-side'),
  value: 1,
  unit: 'sides',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
