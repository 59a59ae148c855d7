/** Estimates of one exercise and side further apart than this, in reps at the bell of the last: test it again. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PROPOSE_TEST: Rule = {
  id: ruleId('propose-test'),
  value: 40,
  unit: 'tenths',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
