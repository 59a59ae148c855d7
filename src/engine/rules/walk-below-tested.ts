/** Only a load lost on the way is won back without earning: one below the load the walk began with, same version. */
import { externalAt } from '../walk/situation.js';
import type { Guard } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const belowTestedGuard: Guard = {
  kind: 'guard',
  row: practiceRow('walk-below-tested', 0, 'g'),
  permits: (at) => at.place.version === at.ground.began.version && at.place.load < at.ground.began.load,
  numbers: (at) => [
    { name: 'held', value: externalAt(at.ground, at.place), unit: 'g' },
    { name: 'tested', value: externalAt(at.ground, at.ground.began), unit: 'g' },
  ],
};
