/** A reserve said to be above this is too rough to measure by: the estimate is weak. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const WEAK_RESERVE: Rule = {
  id: ruleId('weak-reserve'),
  value: 50,
  unit: 'tenths',
  source: 'Hackett et al. 2017, J Strength Cond Res 31(8):2162-2168',
  locator: 'error of about 1 rep at 0 to 5 in reserve, above 2 at 7 to 10',
  standing: 'adapted',
  date: '2026-11-24',
};
