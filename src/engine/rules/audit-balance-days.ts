/** From the age in older-from, a week with strength and balance on fewer days than this is told. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const AUDIT_BALANCE_DAYS: Rule = {
  id: ruleId('audit-balance-days'),
  value: 3,
  unit: 'days',
  source: 'WHO guidelines on physical activity and sedentary behaviour, 2020',
  locator: 'age group 65 and over: balance and strength on 3 days a week or more',
  standing: 'published',
  date: '2026-11-25',
};
