/** By how much the sets are cut in the first week back. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const RETURN_CUT_FIRST: Rule = {
  id: ruleId('return-cut-first'),
  value: 500,
  unit: 'per-mille',
  source: 'Caterisano et al. 2019 (CSCCa and NSCA), Strength Cond J 41(3):1-23',
  locator: 'volume cut by 50, 30, 20 and 10 per cent',
  standing: 'adapted',
  date: '2026-11-25',
};
