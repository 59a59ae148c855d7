/** Away for this many days or more: the first weeks back are gentle. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const BREAK_AWAY: Rule = {
  id: ruleId('break-away'),
  value: 14,
  unit: 'days',
  source: 'Caterisano et al. 2019 (CSCCa and NSCA), Strength Cond J 41(3):1-23',
  locator: 'return after two weeks or more without training',
  standing: 'adapted',
  date: '2026-11-25',
};
