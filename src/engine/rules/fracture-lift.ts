/** After a vertebral fracture: avoid lifting a load from the floor, and putting it down there. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const FRACTURE_LIFT: Rule = {
  id: ruleId('fracture-lift'),
  value: 1,
  unit: 'cautions',
  source: 'Giangregorio et al. 2014, Osteoporos Int 25:821-835',
  locator: 'table 4: no lifting from or lowering to the floor',
  standing: 'adapted',
  date: '2026-11-25',
};
