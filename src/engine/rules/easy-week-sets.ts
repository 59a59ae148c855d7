/** By how many sets, at least, an easy week is below the last work week. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const EASY_WEEK_SETS: Rule = {
  id: ruleId('easy-week-sets'),
  value: 1,
  unit: 'sets',
  source: 'Rogerson et al. 2024, Sports Medicine - Open 10:26',
  locator: 'deload practice of 246 athletes: fewer sets a week, same exercises',
  standing: 'adapted',
  date: '2026-11-24',
};
