/** Rest of conditioning by the clock in the second week back, in times of the work. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const RETURN_REST_SECOND: Rule = {
  id: ruleId('return-rest-second'),
  value: 3,
  unit: 'times',
  source: 'Caterisano et al. 2019 (CSCCa and NSCA), Strength Cond J 41(3):1-23',
  locator: 'frequency, intensity, time: work to rest 1 to 3 in the second week',
  standing: 'adapted',
  date: '2026-11-25',
};
