/** Weeks begin on the first training day on or after the start; more days later than this are told. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const START_MOVED: Rule = {
  id: ruleId('start-moved'),
  value: 0,
  unit: 'days',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};
