/** Shorter on one side: that side leads, and a drill that rehearses the pattern is done on it in the warm-up. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SEEN_SHORTER_SIDE: Rule = {
  id: ruleId('seen-shorter-side'),
  value: 1,
  unit: 'drills',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
