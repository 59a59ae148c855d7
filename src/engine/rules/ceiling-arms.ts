/** Least clear height for arms overhead. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const CEILING_ARMS: Rule = {
  id: ruleId('ceiling-arms'),
  value: 2300,
  unit: 'mm',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
