/** Most pieces of kit in hand over the rounds of a circuit, inside which no plates are changed. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const CIRCUIT_BELLS: Rule = {
  id: ruleId('circuit-bells'),
  value: 2,
  unit: 'pieces',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
