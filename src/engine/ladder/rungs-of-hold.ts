/** Holds: seconds up the range, or reps of short ones; then load or version. */

import { spreadReps, spreadSeconds, stageOf } from './spread-doses.js';
import type { Asked, DosesOfStage } from './stage-doses.js';

export const holdRungs = (asked: Asked): DosesOfStage =>
  stageOf(asked.dose.kind === 'timed' ? spreadSeconds(asked) : spreadReps(asked));
