/** What a working set counts for the muscles it is mainly for. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const AUDIT_DIRECT_SET: Rule = {
  id: ruleId('audit-direct-set'),
  value: 1000,
  unit: 'per-mille',
  source: 'Pelland et al. 2024, preprint on weekly sets (67 studies, 2058 people)',
  locator: 'fractional counting: a direct set is one',
  standing: 'published',
  date: '2026-11-25',
};
