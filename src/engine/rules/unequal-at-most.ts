/** The heavier of two unequal bells is above the lighter by no more than this part of it: about a third. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const UNEQUAL_AT_MOST: Rule = {
  id: ruleId('unequal-at-most'),
  value: 334,
  unit: 'per-mille',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};
