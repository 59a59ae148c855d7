/** Within so many days of a birth the plan is moderate, light first, and no gain in strength is counted on. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const BIRTH_WINDOW: Rule = {
  id: ruleId('birth-window'),
  value: 84,
  unit: 'days',
  source: 'Davenport et al. 2025, Br J Sports Med (Canadian guideline after a birth)',
  locator: 'within the first 12 weeks, as symptoms allow',
  standing: 'adapted',
  date: '2026-11-25',
};
