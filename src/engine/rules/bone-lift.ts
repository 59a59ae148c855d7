/** With low bone density: take care with loads that are lifted from the floor or put down on it. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const BONE_LIFT: Rule = {
  id: ruleId('bone-lift'),
  value: 1,
  unit: 'cautions',
  source: 'Giangregorio et al. 2014, Osteoporos Int 25:821-835',
  locator: 'table 4: no lifting from or lowering to the floor',
  standing: 'adapted',
  date: '2026-11-25',
};
