/** A break that ended longer than this before the block no longer makes its weeks gentle. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const BREAK_COUNTS: Rule = {
  id: ruleId('break-counts'),
  value: 28,
  unit: 'days',
  source: 'Caterisano et al. 2019 (CSCCa and NSCA), Strength Cond J 41(3):1-23',
  locator: 'limits for the first two to four weeks back',
  standing: 'adapted',
  date: '2026-11-25',
};
