/** In a straight block fast work comes first, before the grip tires; 0 leaves it as written. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const FAST_FIRST: Rule = {
  id: ruleId('fast-first'),
  value: 1,
  unit: 'yes or no',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
