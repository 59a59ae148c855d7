/** A reading older than this at the start is taken again; where pressure is known to matter, the plan is moderate until it is. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PRESSURE_HOLDS: Rule = {
  id: ruleId('pressure-holds'),
  value: 90,
  unit: 'days',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
