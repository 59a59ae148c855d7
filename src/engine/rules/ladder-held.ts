/** While pain, a break or a caution holds a client, no rung is gone up. */
import type { LadderGuard } from '../ladder/ladder-rule.js';
import { practiceRow } from './walk-row.js';

export const ladderHeld: LadderGuard = {
  kind: 'guard',
  row: practiceRow('ladder-held', 0, 'rungs'),
  permits: (at) => at.occurrence.held === undefined,
  numbers: (at) => [{ name: 'why', value: at.occurrence.held?.why ?? '', unit: '' }],
};
