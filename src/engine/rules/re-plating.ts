/** To change the plates of a handle or bar. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const RE_PLATING: Rule = {
  id: ruleId('re-plating'),
  value: 60,
  unit: 's',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
