/** More sessions than this in the first week back are told. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const RETURN_DAYS_FIRST: Rule = {
  id: ruleId('return-days-first'),
  value: 3,
  unit: 'sessions',
  source: 'Caterisano et al. 2019 (CSCCa and NSCA), Strength Cond J 41(3):1-23',
  locator: 'frequency, intensity, time: at most 3 days in the first week',
  standing: 'adapted',
  date: '2026-11-25',
};
