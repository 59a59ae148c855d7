/** After a fall below the load the walk began with, the next load up is won back without earning. */
import type { StepOfWalk } from '../walk/walk-rule.js';
import { belowTestedGuard } from './walk-below-tested.js';
import { bottomAndAskedGuard } from './walk-bottom-and-asked.js';
import { derivedGuard } from './walk-derived.js';
import { heldGuard } from './walk-held.js';
import { practiceRow } from './walk-row.js';

export const backUp: StepOfWalk = {
  kind: 'step',
  row: practiceRow('walk-back-up', 0, ''),
  next: (_at, ahead) => ahead.load,
  guards: [heldGuard, derivedGuard, belowTestedGuard, bottomAndAskedGuard],
  outcome: 'rise',
  named: 'back-up',
};
