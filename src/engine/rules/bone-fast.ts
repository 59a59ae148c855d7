/** With low bone density: take care with speed. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const BONE_FAST: Rule = {
  id: ruleId('bone-fast'),
  value: 1,
  unit: 'cautions',
  source: 'Giangregorio et al. 2014, Osteoporos Int 25:821-835',
  locator: 'table 4: bending and twisting are riskiest when rapid',
  standing: 'adapted',
  date: '2026-11-25',
};
