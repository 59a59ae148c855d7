/** So many days without a mark although sessions were planned, between marks or after them, are a break away. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const DONE_GAP: Rule = {
  id: ruleId('done-gap'),
  value: 14,
  unit: 'days',
  source: 'Caterisano et al. 2019 (CSCCa and NSCA), Strength Cond J 41(3):1-23',
  locator: 'return after two weeks or more without training',
  standing: 'adapted',
  date: '2026-11-28',
};
