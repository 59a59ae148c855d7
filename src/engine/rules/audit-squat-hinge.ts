/** A work week in which squats with lunges, or hinges, are more than this against the other is told. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const AUDIT_SQUAT_HINGE: Rule = {
  id: ruleId('audit-squat-hinge'),
  value: 2000,
  unit: 'per-mille',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
