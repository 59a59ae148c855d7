/**
 * The rules of the walk, in the order they are asked. Taking one out of this list by its id leaves the others as they
 * are: a guard no longer refuses, a limit no longer limits, a step is no longer taken, a value is neutral.
 */
import { kitTooLight } from './rules/kit-too-light.js';
import { nothingClimbs } from './rules/nothing-climbs.js';
import { rangeTooHigh } from './rules/range-too-high.js';
import { toEarnATry } from './rules/to-earn-a-try.js';
import { askedLimit } from './rules/walk-asked.js';
import { backUp } from './rules/walk-back-up.js';
import { belowTestedGuard } from './rules/walk-below-tested.js';
import { bigStep } from './rules/walk-big-step.js';
import { bodyweightVersionFirst } from './rules/walk-bodyweight-version-first.js';
import { bottomAndAskedGuard } from './rules/walk-bottom-and-asked.js';
import { bottomAndFloorGuard } from './rules/walk-bottom-and-floor.js';
import { derivedGuard } from './rules/walk-derived.js';
import { earnedAtTop } from './rules/walk-earned-at-top.js';
import { earnedOnceGuard } from './rules/walk-earned-once.js';
import { earnedReserve } from './rules/walk-earned-reserve.js';
import { earnedReset } from './rules/walk-earned-reset.js';
import { earnedTwiceGuard } from './rules/walk-earned-twice.js';
import { easierVersion } from './rules/walk-easier-version.js';
import { easyAskedLimit } from './rules/walk-easy-asked.js';
import { easyCapLimit } from './rules/walk-easy-cap.js';
import { easyDepth } from './rules/walk-easy-depth.js';
import { easyLeast } from './rules/walk-easy-least.js';
import { easyOneFewerLimit } from './rules/walk-easy-one-fewer.js';
import { easyWeek } from './rules/walk-easy-week.js';
import { fewerReps } from './rules/walk-fewer-reps.js';
import { fewest } from './rules/walk-fewest.js';
import { floorLimit } from './rules/walk-floor.js';
import { gain } from './rules/walk-gain.js';
import { gateOnceGuard } from './rules/walk-gate-once.js';
import { gatesAllowedGuard } from './rules/walk-gates-allowed.js';
import { halfReps } from './rules/walk-half-reps.js';
import { harderVersion } from './rules/walk-harder-version.js';
import { heavierFirst } from './rules/walk-heavier-first.js';
import { heldGuard } from './rules/walk-held.js';
import { heldReps } from './rules/walk-held-reps.js';
import { lowerLoad } from './rules/walk-lower-load.js';
import { moreRepsFirst } from './rules/walk-more-reps-first.js';
import { nearestAsked } from './rules/walk-nearest-asked.js';
import { newIsLighter } from './rules/walk-new-is-lighter.js';
import { noTrialAfterGateGuard } from './rules/walk-no-trial-after-gate.js';
import { normalTempo } from './rules/walk-normal-tempo.js';
import { range } from './rules/walk-range.js';
import { slower } from './rules/walk-slower.js';
import { slowerEarnedGuard } from './rules/walk-slower-earned.js';
import { slowerLeavesFloorGuard } from './rules/walk-slower-leaves-floor.js';
import { smallStep } from './rules/walk-small-step.js';
import { smallStepSize } from './rules/walk-small-step-size.js';
import { tempiUsedUpGuard } from './rules/walk-tempi-used-up.js';
import { tempoFactor } from './rules/walk-tempo-factor.js';
import { tempoReset } from './rules/walk-tempo-reset.js';
import { tolerance } from './rules/walk-tolerance.js';
import { trial } from './rules/walk-trial.js';
import { trialAllowedGuard } from './rules/walk-trial-allowed.js';
import { trialCloses } from './rules/walk-trial-closes.js';
import { trialInRangeGuard } from './rules/walk-trial-in-range.js';
import { trialMarginGuard } from './rules/walk-trial-margin.js';
import { trialOnceAWeekGuard } from './rules/walk-trial-once-a-week.js';
import { trialTwoSetsGuard } from './rules/walk-trial-two-sets.js';
import { trialWaitsGuard } from './rules/walk-trial-waits.js';
import { versionTrial } from './rules/walk-version-trial.js';
import { volumeLimit } from './rules/walk-volume.js';
import { volumeFirst } from './rules/walk-volume-first.js';
import { volumeOneRep } from './rules/walk-volume-one-rep.js';
import { volumeShare } from './rules/walk-volume-share.js';
import { weakAbove } from './rules/walk-weak-above.js';
import { weakNoRiseGuard } from './rules/walk-weak-no-rise.js';
import { weakTrial } from './rules/walk-weak-trial.js';
import { weakTwiceGuard } from './rules/walk-weak-twice.js';
import type { RuleOfWalk } from './walk/walk-rule.js';

export const rulesOfTheWalk: readonly RuleOfWalk[] = [
  backUp,
  smallStep,
  bigStep,
  trial,
  slower,
  harderVersion,
  versionTrial,
  heldGuard,
  derivedGuard,
  belowTestedGuard,
  bottomAndAskedGuard,
  earnedOnceGuard,
  weakTwiceGuard,
  gateOnceGuard,
  noTrialAfterGateGuard,
  tempiUsedUpGuard,
  earnedTwiceGuard,
  weakNoRiseGuard,
  bottomAndFloorGuard,
  gatesAllowedGuard,
  trialAllowedGuard,
  trialInRangeGuard,
  trialTwoSetsGuard,
  trialMarginGuard,
  trialOnceAWeekGuard,
  slowerEarnedGuard,
  trialWaitsGuard,
  slowerLeavesFloorGuard,
  floorLimit,
  askedLimit,
  volumeLimit,
  heldReps,
  easyAskedLimit,
  easyCapLimit,
  easyOneFewerLimit,
  fewerReps,
  normalTempo,
  lowerLoad,
  easierVersion,
  nearestAsked,
  heavierFirst,
  moreRepsFirst,
  range,
  earnedAtTop,
  earnedReserve,
  earnedReset,
  smallStepSize,
  tolerance,
  volumeShare,
  volumeOneRep,
  volumeFirst,
  weakAbove,
  weakTrial,
  gain,
  tempoFactor,
  tempoReset,
  bodyweightVersionFirst,
  newIsLighter,
  halfReps,
  trialCloses,
  fewest,
  easyWeek,
  easyDepth,
  easyLeast,
  kitTooLight,
  toEarnATry,
  rangeTooHigh,
  nothingClimbs,
];
