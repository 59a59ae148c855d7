/** The reps of a signal take no more than this part of the seconds up to the next: as much rest as work at least. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SIGNAL_WORK: Rule = {
  id: ruleId('signal-work'),
  value: 500,
  unit: 'per-mille',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
