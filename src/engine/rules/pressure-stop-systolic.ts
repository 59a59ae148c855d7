/** No plan while the upper figure of the blood pressure at rest is above this. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PRESSURE_STOP_SYSTOLIC: Rule = {
  id: ruleId('pressure-stop-systolic'),
  value: 180,
  unit: 'mmHg',
  source: 'Williams et al. 2007, Circulation 116:572-584',
  locator: 'resistance exercise, absolute: above 180/110; as remembered, the statement itself was not seen',
  standing: 'adapted',
  date: '2026-11-25',
};
