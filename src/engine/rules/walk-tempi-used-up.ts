/** A strength row comes to a harder version when its tempi are used up; a bodyweight row comes to it before them. */
import type { Guard } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const tempiUsedUpGuard: Guard = {
  kind: 'guard',
  row: practiceRow('walk-tempi-used-up', 0, ''),
  permits: (at) =>
    (at.ground.input.way === 'bodyweight' && at.ground.habits.bodyweightVersionFirst) ||
    at.place.tempo >= at.ground.input.tempi.length - 1,
  numbers: (at) => [
    { name: 'tempo', value: at.place.tempo + 1, unit: '' },
    { name: 'tempi', value: at.ground.input.tempi.length, unit: '' },
  ],
};
