/** It was light: the next load is as good as earned, and open as soon as the reps for it are predicted. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SEEN_LIGHT: Rule = {
  id: ruleId('seen-light'),
  value: 2,
  unit: 'earned',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
