/** Added to the asked reserve where the next set comes before breath is back: in circuits, at signals, in steps. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const CIRCUIT_RESERVE: Rule = {
  id: ruleId('circuit-reserve'),
  value: 10,
  unit: 'tenths',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
