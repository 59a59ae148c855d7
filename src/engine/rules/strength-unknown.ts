/** A test from before a break of this many days or more says nothing any longer: a feeler set. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const STRENGTH_UNKNOWN: Rule = {
  id: ruleId('strength-unknown'),
  value: 35,
  unit: 'days',
  source: 'McMaster et al. 2013, Sports Med 43:367-384',
  locator: 'strength falls from the fifth week on',
  standing: 'adapted',
  date: '2026-11-25',
};
