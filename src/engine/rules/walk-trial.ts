/** A big step not open yet is tried with the first set, each work week until it becomes a rise. */
import type { StepOfWalk } from '../walk/walk-rule.js';
import { derivedGuard } from './walk-derived.js';
import { earnedTwiceGuard } from './walk-earned-twice.js';
import { heldGuard } from './walk-held.js';
import { noTrialAfterGateGuard } from './walk-no-trial-after-gate.js';
import { practiceRow } from './walk-row.js';
import { isSmallStep } from './walk-small-step-size.js';
import { trialAllowedGuard } from './walk-trial-allowed.js';
import { trialInRangeGuard } from './walk-trial-in-range.js';
import { trialMarginGuard } from './walk-trial-margin.js';
import { trialOnceAWeekGuard } from './walk-trial-once-a-week.js';
import { trialTwoSetsGuard } from './walk-trial-two-sets.js';

export const trial: StepOfWalk = {
  kind: 'step',
  row: practiceRow('walk-trial', 0, ''),
  next: (at, ahead) => (ahead.load !== null && !isSmallStep(at, ahead.load) ? ahead.load : null),
  guards: [
    heldGuard,
    derivedGuard,
    noTrialAfterGateGuard,
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
