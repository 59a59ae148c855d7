/** From this degree on the exercise is made easier, one load lighter, and what asks much of that part is left alone for as long. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PAIN_EASIER: Rule = {
  id: ruleId('pain-easier'),
  value: 3,
  unit: 'of 10',
  source: 'Thomeé 1997, Phys Ther 77:1690-1703',
  locator: '2 to 5 of 10 acceptable; stricter here',
  standing: 'adapted',
  date: '2026-11-28',
};
