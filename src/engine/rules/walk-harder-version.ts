/** With nothing else open, the next harder version, behind a gate. */
import type { StepOfWalk } from '../walk/walk-rule.js';
import { bottomAndFloorGuard } from './walk-bottom-and-floor.js';
import { derivedGuard } from './walk-derived.js';
import { earnedTwiceGuard } from './walk-earned-twice.js';
import { gateOnceGuard } from './walk-gate-once.js';
import { gatesAllowedGuard } from './walk-gates-allowed.js';
import { heldGuard } from './walk-held.js';
import { practiceRow } from './walk-row.js';
import { tempiUsedUpGuard } from './walk-tempi-used-up.js';
import { trialWaitsGuard } from './walk-trial-waits.js';
import { weakNoRiseGuard } from './walk-weak-no-rise.js';

export const harderVersion: StepOfWalk = {
  kind: 'step',
  row: practiceRow('walk-harder-version', 0, ''),
  next: (_at, ahead) => ahead.version,
  guards: [
    heldGuard,
    derivedGuard,
    gateOnceGuard,
    trialWaitsGuard,
    tempiUsedUpGuard,
    earnedTwiceGuard,
    weakNoRiseGuard,
    bottomAndFloorGuard,
    gatesAllowedGuard,
  ],
  outcome: 'gate',
  named: 'harder-version',
};
