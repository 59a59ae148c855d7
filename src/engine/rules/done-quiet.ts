/** A row left out in so many consecutive sessions done is told to the coach. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const DONE_QUIET: Rule = {
  id: ruleId('done-quiet'),
  value: 3,
  unit: 'sessions',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
