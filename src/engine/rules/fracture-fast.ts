/** After a vertebral fracture: avoid impact and speed. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const FRACTURE_FAST: Rule = {
  id: ruleId('fracture-fast'),
  value: 2,
  unit: 'cautions',
  source: 'Giangregorio et al. 2014, Osteoporos Int 25:821-835',
  locator: 'table 4: bending is riskiest when rapid',
  standing: 'adapted',
  date: '2026-11-25',
};
