/** To set a load down on the floor and pick it up again, once a set. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PUT_DOWN: Rule = {
  id: ruleId('put-down'),
  value: 5,
  unit: 's',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
