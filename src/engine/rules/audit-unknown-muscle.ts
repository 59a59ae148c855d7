/** How many exercises may name a muscle of no major group before it is told. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const AUDIT_UNKNOWN_MUSCLE: Rule = {
  id: ruleId('audit-unknown-muscle'),
  value: 0,
  unit: 'exercises',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
