/** Most plates on one side of a dumbbell handle; of a bar none is assumed. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PLATES_A_SIDE: Rule = {
  id: ruleId('plates-a-side'),
  value: 5,
  unit: 'plates',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
