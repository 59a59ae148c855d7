/** Fewer stands than this in a chair stand test are told, whatever the age. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const CHAIR_STAND_LOW: Rule = {
  id: ruleId('chair-stand-low'),
  value: 8,
  unit: 'reps',
  source: 'Rikli and Jones 1999, J Aging Phys Act 7(2):162-181',
  locator: 'fewer than 8 unassisted stands: lower function',
  standing: 'adapted',
  date: '2026-11-25',
};
