/** For so many days after a birth the signs to stop at are told besides the usual ones. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const BIRTH_SIGNS: Rule = {
  id: ruleId('birth-signs'),
  value: 84,
  unit: 'days',
  source: 'Davenport et al. 2025, Br J Sports Med (Canadian guideline after a birth)',
  locator: 'bleeding after the birth must not grow',
  standing: 'published',
  date: '2026-11-25',
};
