/** Length of one set of a composed warm-up or cool-down, of each side. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const EASY_SET: Rule = {
  id: ruleId('easy-set'),
  value: 30,
  unit: 's',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
