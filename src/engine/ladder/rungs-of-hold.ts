/** Holds: seconds up the range, as long as a hold may last, or reps of short ones; then load or version. */
import { HOLD_MOST } from '../rules/hold-most.js';
import { spreadReps, spreadSeconds, stageOf } from './spread-doses.js';
import type { Asked, DosesOfStage } from './stage-doses.js';

export const holdRungs = (asked: Asked): DosesOfStage =>
  stageOf(asked.dose.kind === 'timed' ? spreadSeconds(asked, asked.inForce(HOLD_MOST)) : spreadReps(asked));
