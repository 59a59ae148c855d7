/** For so many days after a birth, take care with impact; avoid it within `birth-window`. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const BIRTH_IMPACT: Rule = {
  id: ruleId('birth-impact'),
  value: 182,
  unit: 'days',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
