/** Two who train together are planned apart, each from their own page, and the coach is told; 0 leaves it untold. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PARTNER_APART: Rule = {
  id: ruleId('partner-apart'),
  value: 1,
  unit: 'yes or no',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
