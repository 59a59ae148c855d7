/** After a vertebral fracture: take care with going to the floor; loads are lifted from a height. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const FRACTURE_FLOOR: Rule = {
  id: ruleId('fracture-floor'),
  value: 1,
  unit: 'cautions',
  source: 'Giangregorio et al. 2014, Osteoporos Int 25:821-835',
  locator: 'table 4: no lifting from or lowering to the floor',
  standing: 'adapted',
  date: '2026-11-25',
};
