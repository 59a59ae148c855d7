/** A big step of load is a rise with a gate: what it needs is printed beside it, with what to do otherwise. */
import type { StepOfWalk } from '../walk/walk-rule.js';
import { bottomAndFloorGuard } from './walk-bottom-and-floor.js';
import { derivedGuard } from './walk-derived.js';
import { earnedTwiceGuard } from './walk-earned-twice.js';
import { gateOnceGuard } from './walk-gate-once.js';
import { gatesAllowedGuard } from './walk-gates-allowed.js';
import { heldGuard } from './walk-held.js';
import { practiceRow } from './walk-row.js';
import { isSmallStep } from './walk-small-step-size.js';
import { weakNoRiseGuard } from './walk-weak-no-rise.js';

export const bigStep: StepOfWalk = {
  kind: 'step',
  row: practiceRow('walk-big-step', 0, ''),
  next: (at, ahead) => (ahead.load !== null && !isSmallStep(at, ahead.load) ? ahead.load : null),
  guards: [
    heldGuard,
    derivedGuard,
    gateOnceGuard,
    earnedTwiceGuard,
    weakNoRiseGuard,
    bottomAndFloorGuard,
    gatesAllowedGuard,
  ],
  outcome: 'gate',
  named: 'big-step',
};
