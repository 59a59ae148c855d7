/** Pain up to this degree: carry on, and nothing is made harder for a while. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PAIN_GENTLE: Rule = {
  id: ruleId('pain-gentle'),
  value: 2,
  unit: 'of 10',
  source: 'Thomeé 1997, Phys Ther 77:1690-1703',
  locator: 'up to 2 of 10 safe; here nothing is made harder either',
  standing: 'adapted',
  date: '2026-11-28',
};
