/** Length of a chair stand test. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const CHAIR_STAND_SECONDS: Rule = {
  id: ruleId('chair-stand-seconds'),
  value: 30,
  unit: 's',
  source: 'Rikli and Jones 1999, J Aging Phys Act 7(2):162-181',
  locator: '30-second chair stand',
  standing: 'published',
  date: '2026-11-25',
};
