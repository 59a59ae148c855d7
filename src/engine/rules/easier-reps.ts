/** An easier version counted in reps, in place of what is not, has this many, where the programme asks no reps of it. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const EASIER_REPS: Rule = {
  id: ruleId('easier-reps'),
  value: 5,
  unit: 'reps',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
