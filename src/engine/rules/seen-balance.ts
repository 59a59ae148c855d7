/** Balance was lost: an easier version for balance takes the place of the exercise, where one is open. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SEEN_BALANCE: Rule = {
  id: ruleId('seen-balance'),
  value: 1,
  unit: 'versions',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
