/** Gain in capacity expected of a trained client in a work week. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const GAIN_TRAINED: Rule = {
  id: ruleId('gain-trained'),
  value: 50,
  unit: 'per-ten-thousand',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
