/** A test from before a break of this many days or more is not taken whole. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const STRENGTH_KEPT: Rule = {
  id: ruleId('strength-kept'),
  value: 21,
  unit: 'days',
  source: 'McMaster et al. 2013, Sports Med 43:367-384',
  locator: 'strength kept for up to about 3 weeks',
  standing: 'adapted',
  date: '2026-11-25',
};
