/** Gain in capacity expected of a novice in a work week. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const GAIN_NOVICE: Rule = {
  id: ruleId('gain-novice'),
  value: 100,
  unit: 'per-ten-thousand',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
