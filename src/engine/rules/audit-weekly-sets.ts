/** A work week with fewer sets than this for a major muscle group is told. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const AUDIT_WEEKLY_SETS: Rule = {
  id: ruleId('audit-weekly-sets'),
  value: 4,
  unit: 'sets',
  source: 'Iversen et al. 2021, Sports Med 51:2079-2095',
  locator: 'at least 4 weekly sets a muscle group',
  standing: 'published',
  date: '2026-11-25',
};
