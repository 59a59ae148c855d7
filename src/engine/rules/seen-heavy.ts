/** It was heavy: the row begins so many loads lighter, and nothing is earned yet. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SEEN_HEAVY: Rule = {
  id: ruleId('seen-heavy'),
  value: 1,
  unit: 'loads',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
