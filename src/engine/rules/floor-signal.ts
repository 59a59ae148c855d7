/** Reps at a signal are no more than this part of what could be done to failure: the rest of them is the floor. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const FLOOR_SIGNAL: Rule = {
  id: ruleId('floor-signal'),
  value: 500,
  unit: 'per-mille',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
