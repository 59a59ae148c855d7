/** Older clients, those who fell, or with a caution on the floor or the head down, warm up standing; 0 leaves it. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const WARM_UP_STANDING: Rule = {
  id: ruleId('warm-up-standing'),
  value: 1,
  unit: 'yes or no',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
