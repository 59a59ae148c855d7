/** A small step of load is a plain rise. */
import type { StepOfWalk } from '../walk/walk-rule.js';
import { bottomAndFloorGuard } from './walk-bottom-and-floor.js';
import { derivedGuard } from './walk-derived.js';
import { earnedOnceGuard } from './walk-earned-once.js';
import { heldGuard } from './walk-held.js';
import { practiceRow } from './walk-row.js';
import { isSmallStep } from './walk-small-step-size.js';
import { weakTwiceGuard } from './walk-weak-twice.js';

export const smallStep: StepOfWalk = {
  kind: 'step',
  row: practiceRow('walk-small-step', 0, ''),
  next: (at, ahead) => (ahead.load !== null && isSmallStep(at, ahead.load) ? ahead.load : null),
  guards: [heldGuard, derivedGuard, earnedOnceGuard, weakTwiceGuard, bottomAndFloorGuard],
  outcome: 'rise',
  named: 'small-step',
};
