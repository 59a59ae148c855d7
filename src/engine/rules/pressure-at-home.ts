/** Figures of pressure are printed only for a client who owns a cuff. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PRESSURE_AT_HOME: Rule = {
  id: ruleId('pressure-at-home'),
  value: 1,
  unit: 'cuffs',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
