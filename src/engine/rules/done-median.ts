/** What a side can lift now is the median of what its last so many occurrences with a reserve said make it; of two the lower. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const DONE_MEDIAN: Rule = {
  id: ruleId('done-median'),
  value: 3,
  unit: 'occurrences',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};
