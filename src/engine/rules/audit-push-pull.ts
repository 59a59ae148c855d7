/** A work week in which pushes or pulls are more than this against the other is told. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const AUDIT_PUSH_PULL: Rule = {
  id: ruleId('audit-push-pull'),
  value: 1500,
  unit: 'per-mille',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
