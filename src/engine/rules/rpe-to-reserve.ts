/** Reps in reserve are this less the rating of perceived exertion. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const RPE_TO_RESERVE: Rule = {
  id: ruleId('rpe-to-reserve'),
  value: 100,
  unit: 'tenths',
  source: 'Zourdos et al. 2016, J Strength Cond Res 30(1):267-275',
  locator: 'table of the scale, RPE 7 to 10',
  standing: 'published',
  date: '2026-11-24',
};
