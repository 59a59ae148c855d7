/** A hold is kept up for no longer than this in one set; a longer one is told. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const HOLD_MOST: Rule = {
  id: ruleId('hold-most'),
  value: 120,
  unit: 's',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
