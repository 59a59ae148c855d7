/** What a working set counts for the muscles that assist. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const AUDIT_INDIRECT_SET: Rule = {
  id: ruleId('audit-indirect-set'),
  value: 500,
  unit: 'per-mille',
  source: 'Pelland et al. 2024, preprint on weekly sets (67 studies, 2058 people)',
  locator: 'fractional counting, which fitted best: an indirect set is a half',
  standing: 'published',
  date: '2026-11-25',
};
