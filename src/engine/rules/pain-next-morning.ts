/** Worse the next morning counts as so many bands higher. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PAIN_NEXT_MORNING: Rule = {
  id: ruleId('pain-next-morning'),
  value: 1,
  unit: 'bands',
  source: 'Silbernagel et al. 2007, Am J Sports Med 35:897-906',
  locator: 'pain gone by the next morning',
  standing: 'adapted',
  date: '2026-11-28',
};
