/** Reps in reserve not gone below in a moderate plan: 5 to 6 of 10 is moderate, and leaves 4 to 6. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const FLOOR_MODERATE: Rule = {
  id: ruleId('floor-moderate'),
  value: 40,
  unit: 'tenths',
  source: 'Zourdos et al. 2016, J Strength Cond Res 30(1):267-275',
  locator: 'table of the scale, RPE 5 to 6',
  standing: 'adapted',
  date: '2026-11-25',
};
