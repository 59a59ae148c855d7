/** Reps in reserve not gone below in a row whose versions, as planned, meet a caution. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const FLOOR_CAUTIONED: Rule = {
  id: ruleId('floor-cautioned'),
  value: 30,
  unit: 'tenths',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
