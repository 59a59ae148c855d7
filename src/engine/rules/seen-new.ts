/** New to the movement: a weak estimate, begun so many loads lighter; a fast lift keeps its bell, which too light would teach wrongly. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SEEN_NEW: Rule = {
  id: ruleId('seen-new'),
  value: 1,
  unit: 'loads',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
