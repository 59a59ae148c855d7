/** A row of the lighter bell never goes above so many loads below the main one. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const LIGHTER_BELL: Rule = {
  id: ruleId('lighter-bell'),
  value: 1,
  unit: 'loads',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
