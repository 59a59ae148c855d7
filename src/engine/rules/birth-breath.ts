/** For so many days after a birth the breath is never held, and what asks of the pelvic floor is done with care. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const BIRTH_BREATH: Rule = {
  id: ruleId('birth-breath'),
  value: 182,
  unit: 'days',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
