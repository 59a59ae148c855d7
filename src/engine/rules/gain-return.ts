/** Gain in capacity counted on in a block with gentle weeks after a break. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const GAIN_RETURN: Rule = {
  id: ruleId('gain-return'),
  value: 0,
  unit: 'per-ten-thousand',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
