/** With no step of load open, the next slower tempo. */
import type { StepOfWalk } from '../walk/walk-rule.js';
import { heldGuard } from './walk-held.js';
import { practiceRow } from './walk-row.js';
import { slowerEarnedGuard } from './walk-slower-earned.js';
import { slowerLeavesFloorGuard } from './walk-slower-leaves-floor.js';
import { trialWaitsGuard } from './walk-trial-waits.js';

export const slower: StepOfWalk = {
  kind: 'step',
  row: practiceRow('walk-slower', 0, ''),
  next: (_at, ahead) => ahead.tempo,
  guards: [heldGuard, slowerEarnedGuard, trialWaitsGuard, slowerLeavesFloorGuard],
  outcome: 'rise',
  named: 'slower',
};
