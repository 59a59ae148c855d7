/** With low bone density, a training day with fewer exercises than this that ask for balance is told. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const AUDIT_BONE_BALANCE: Rule = {
  id: ruleId('audit-bone-balance'),
  value: 1,
  unit: 'exercises',
  source: 'Giangregorio et al. 2014, Osteoporos Int 25:821-835',
  locator: 'balance training daily; here on every training day',
  standing: 'adapted',
  date: '2026-11-25',
};
