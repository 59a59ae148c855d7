/** For how many weeks back the floor `break-floor` holds. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const BREAK_FLOOR_WEEKS: Rule = {
  id: ruleId('break-floor-weeks'),
  value: 2,
  unit: 'weeks',
  source: 'Caterisano et al. 2019 (CSCCa and NSCA), Strength Cond J 41(3):1-23',
  locator: 'the first two weeks are the most limited',
  standing: 'adapted',
  date: '2026-11-25',
};
