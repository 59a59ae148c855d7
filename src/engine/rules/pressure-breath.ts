/** Where blood pressure matters the breath is never held. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PRESSURE_BREATH: Rule = {
  id: ruleId('pressure-breath'),
  value: 1,
  unit: 'cautions',
  source: 'Williams et al. 2007, Circulation 116:572-584',
  locator: 'breathe out on the effort, no breath-holding',
  standing: 'adapted',
  date: '2026-11-25',
};
