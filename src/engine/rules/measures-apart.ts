/** So many tests of the same muscles may stand in the session of the published measures, where the week has one with no more. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const MEASURES_APART: Rule = {
  id: ruleId('measures-apart'),
  value: 0,
  unit: 'tests',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
