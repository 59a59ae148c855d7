/** Rest of conditioning by the clock in the first week back, in times of the work. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const RETURN_REST_FIRST: Rule = {
  id: ruleId('return-rest-first'),
  value: 4,
  unit: 'times',
  source: 'Caterisano et al. 2019 (CSCCa and NSCA), Strength Cond J 41(3):1-23',
  locator: 'frequency, intensity, time: work to rest 1 to 4 in the first week',
  standing: 'adapted',
  date: '2026-11-25',
};
