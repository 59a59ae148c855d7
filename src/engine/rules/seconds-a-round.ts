/** Length of one round of what an exercise itself describes. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SECONDS_A_ROUND: Rule = {
  id: ruleId('seconds-a-round'),
  value: 60,
  unit: 's',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
