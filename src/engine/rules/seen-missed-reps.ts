/** Reps were missed: the row begins so many loads lighter, leaves more in reserve, and nothing is earned yet. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SEEN_MISSED_REPS: Rule = {
  id: ruleId('seen-missed-reps'),
  value: 1,
  unit: 'loads',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
