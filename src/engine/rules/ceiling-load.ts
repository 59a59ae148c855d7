/** Least clear height for a load overhead. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const CEILING_LOAD: Rule = {
  id: ruleId('ceiling-load'),
  value: 2500,
  unit: 'mm',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
