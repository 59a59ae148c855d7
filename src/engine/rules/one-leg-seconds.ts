/** Longest time a one-leg stand is held in a test. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const ONE_LEG_SECONDS: Rule = {
  id: ruleId('one-leg-seconds'),
  value: 30,
  unit: 's',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
