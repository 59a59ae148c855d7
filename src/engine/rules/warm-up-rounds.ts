/** Most times through a composed warm-up or cool-down. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const WARM_UP_ROUNDS: Rule = {
  id: ruleId('warm-up-rounds'),
  value: 3,
  unit: 'rounds',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
