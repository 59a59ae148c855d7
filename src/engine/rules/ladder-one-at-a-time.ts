/** One rung at a time: a new load or version waits until the rungs below it have been done. */
import type { LadderGuard } from '../ladder/ladder-rule.js';
import { practiceRow } from './walk-row.js';

export const ladderOneAtATime: LadderGuard = {
  kind: 'guard',
  row: practiceRow('ladder-one-at-a-time', 1, 'steps'),
  permits: (at, next) => next === at.rung + 1,
  numbers: (at, next) => [{ name: 'rungs between', value: next - at.rung - 1, unit: '' }],
};
