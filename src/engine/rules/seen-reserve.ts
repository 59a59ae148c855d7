/** How much more is left in reserve after missed reps, or a breath held. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SEEN_RESERVE: Rule = {
  id: ruleId('seen-reserve'),
  value: 10,
  unit: 'tenths',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
