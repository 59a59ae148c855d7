/** From this degree on the exercise is left out until the coach writes that it is cleared. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PAIN_LEAVE: Rule = {
  id: ruleId('pain-leave'),
  value: 4,
  unit: 'of 10',
  source: 'Silbernagel et al. 2007, Am J Sports Med 35:897-906',
  locator: 'up to 5 of 10 allowed under a therapist’s eye; stricter at home',
  standing: 'adapted',
  date: '2026-11-28',
};
