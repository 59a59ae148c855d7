/** A load tried and done as asked in so many sessions of different weeks is open: a plain rise, even on a weak estimate. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const DONE_TRIAL: Rule = {
  id: ruleId('done-trial'),
  value: 2,
  unit: 'sessions',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
