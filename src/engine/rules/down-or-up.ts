/** Down to the floor, or up from it. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const DOWN_OR_UP: Rule = {
  id: ruleId('down-or-up'),
  value: 20,
  unit: 's',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
