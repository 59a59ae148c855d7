/** The reps were hurried: the row begins with the slow lowering where it has one. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SEEN_HURRYING: Rule = {
  id: ruleId('seen-hurrying'),
  value: 1,
  unit: 'tempi',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
