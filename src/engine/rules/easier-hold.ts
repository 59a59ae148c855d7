/** An easier hold in place of what is not held lasts this long, where the programme asks no time of that hold. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const EASIER_HOLD: Rule = {
  id: ruleId('easier-hold'),
  value: 10,
  unit: 's',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
