/** To change one bell for another. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const CHANGE_OF_BELL: Rule = {
  id: ruleId('change-of-bell'),
  value: 15,
  unit: 's',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
