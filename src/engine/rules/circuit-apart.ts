/** Rows between two that ask much of the grip, or between two hinges, round after round. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const CIRCUIT_APART: Rule = {
  id: ruleId('circuit-apart'),
  value: 1,
  unit: 'rows',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
