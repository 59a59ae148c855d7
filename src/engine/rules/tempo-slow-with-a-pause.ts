/** Reps to failure with a slow lowering and a pause, against the normal tempo. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const TEMPO_SLOW_WITH_A_PAUSE: Rule = {
  id: ruleId('tempo-slow-with-a-pause'),
  value: 700,
  unit: 'per-mille',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
