/** Above this lower figure at rest a licensed person is asked first, and the plan is moderate. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PRESSURE_ASK_DIASTOLIC: Rule = {
  id: ruleId('pressure-ask-diastolic'),
  value: 100,
  unit: 'mmHg',
  source: 'Williams et al. 2007, Circulation 116:572-584',
  locator: 'resistance exercise, relative: above 160/100; as remembered, the statement itself was not seen',
  standing: 'adapted',
  date: '2026-11-25',
};
