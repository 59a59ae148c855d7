/** Length of the cool-down for the same clients. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const COOL_DOWN_OLDER: Rule = {
  id: ruleId('cool-down-older'),
  value: 5,
  unit: 'minutes',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
