/** A harder version not open yet is tried with the first set. */
import type { StepOfWalk } from '../walk/walk-rule.js';
import { derivedGuard } from './walk-derived.js';
import { earnedTwiceGuard } from './walk-earned-twice.js';
import { heldGuard } from './walk-held.js';
import { noTrialAfterGateGuard } from './walk-no-trial-after-gate.js';
import { practiceRow } from './walk-row.js';
import { tempiUsedUpGuard } from './walk-tempi-used-up.js';
import { trialAllowedGuard } from './walk-trial-allowed.js';
import { trialInRangeGuard } from './walk-trial-in-range.js';
import { trialMarginGuard } from './walk-trial-margin.js';
import { trialOnceAWeekGuard } from './walk-trial-once-a-week.js';
import { trialTwoSetsGuard } from './walk-trial-two-sets.js';

export const versionTrial: StepOfWalk = {
  kind: 'step',
  row: practiceRow('walk-version-trial', 0, ''),
  next: (_at, ahead) => ahead.version,
  guards: [
    heldGuard,
    derivedGuard,
    noTrialAfterGateGuard,
    tempiUsedUpGuard,
    earnedTwiceGuard,
    trialAllowedGuard,
    trialInRangeGuard,
    trialTwoSetsGuard,
    trialMarginGuard,
    trialOnceAWeekGuard,
  ],
  outcome: 'trial',
  named: 'stay',
};
