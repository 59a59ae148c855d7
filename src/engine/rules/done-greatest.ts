/** The greatest set marked is the one that no leap in volume is measured from; 0 leaves the first one free. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const DONE_GREATEST: Rule = {
  id: ruleId('done-greatest'),
  value: 1,
  unit: 'yes or no',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
