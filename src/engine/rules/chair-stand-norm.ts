/** A chair stand test below this percentile of people of that age is told; of the two printed ranges the lower. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const CHAIR_STAND_NORM: Rule = {
  id: ruleId('chair-stand-norm'),
  value: 25,
  unit: 'percentile',
  source: 'Rikli and Jones 1999, J Aging Phys Act 7(2):162-181',
  locator: '25th to 75th percentile by age group',
  standing: 'published',
  date: '2026-11-25',
};
