/** Reps to failure with a slow lowering, against the normal tempo. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const TEMPO_SLOW_LOWERING: Rule = {
  id: ruleId('tempo-slow-lowering'),
  value: 800,
  unit: 'per-mille',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
