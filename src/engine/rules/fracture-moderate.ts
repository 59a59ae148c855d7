/** After a vertebral fracture the plan is moderate: form before effort. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const FRACTURE_MODERATE: Rule = {
  id: ruleId('fracture-moderate'),
  value: 1,
  unit: 'plans',
  source: 'Giangregorio et al. 2014, Osteoporos Int 25:821-835',
  locator: 'table 4: form matters more than intensity; moderate only with a vertebral fracture',
  standing: 'adapted',
  date: '2026-11-25',
};
