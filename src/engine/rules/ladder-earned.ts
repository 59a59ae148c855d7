/** How many work occurrences, one after the other, are done on a rung before the next one. */
import type { LadderGuard } from '../ladder/ladder-rule.js';
import { sourcedRow } from './walk-row.js';

export const ladderEarned: LadderGuard = {
  kind: 'guard',
  row: sourcedRow('ladder-earned', 2, 'occurrences', 'practice', 'common practice, no source', ''),
  permits: (at) => at.earned >= at.input.rules.earned,
  numbers: (at) => [
    { name: 'earned', value: at.earned, unit: '' },
    { name: 'needed', value: at.input.rules.earned, unit: '' },
  ],
};
