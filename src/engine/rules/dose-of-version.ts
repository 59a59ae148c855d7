/** A version that does not take the row’s dose is done in plain sets of the nearest amount, so many at most. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const DOSE_OF_VERSION: Rule = {
  id: ruleId('dose-of-version'),
  value: 5,
  unit: 'sets',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
