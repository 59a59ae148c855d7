/** How many loads lighter than its relative allows a movement new to the client starts. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const NEW_MOVEMENT_LIGHTER: Rule = {
  id: ruleId('new-movement-lighter'),
  value: 1,
  unit: 'loads',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
