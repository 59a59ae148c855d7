/** A row of the main bell starts with the one the coach names for the movement, else with the load tested last. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const MAIN_BELL: Rule = {
  id: ruleId('main-bell'),
  value: 1,
  unit: 'loads',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
