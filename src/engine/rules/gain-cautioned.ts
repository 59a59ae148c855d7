/** Gain in capacity counted on in a row whose versions, as planned, meet a caution. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const GAIN_CAUTIONED: Rule = {
  id: ruleId('gain-cautioned'),
  value: 0,
  unit: 'per-ten-thousand',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
