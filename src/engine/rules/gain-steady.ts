/** Gain in capacity counted on while the work is to be kept steady for the sake of health. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const GAIN_STEADY: Rule = {
  id: ruleId('gain-steady'),
  value: 0,
  unit: 'per-ten-thousand',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
