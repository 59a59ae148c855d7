/** More sessions than this in the second week back are told. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const RETURN_DAYS_SECOND: Rule = {
  id: ruleId('return-days-second'),
  value: 4,
  unit: 'sessions',
  source: 'Caterisano et al. 2019 (CSCCa and NSCA), Strength Cond J 41(3):1-23',
  locator: 'frequency, intensity, time: at most 4 days in the second week',
  standing: 'adapted',
  date: '2026-11-25',
};
