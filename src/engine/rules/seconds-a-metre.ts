/** To carry a load or travel one metre, turns included. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SECONDS_A_METRE: Rule = {
  id: ruleId('seconds-a-metre'),
  value: 15,
  unit: 'tenths of a second',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
