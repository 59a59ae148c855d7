/** Anything on bands, pulling or helping: reps or seconds up the range; then the next band. */

import { spreadReps, spreadSeconds, stageOf } from './spread-doses.js';
import type { Asked, DosesOfStage } from './stage-doses.js';

export const bandRungs = (asked: Asked): DosesOfStage =>
  stageOf(asked.dose.kind === 'timed' ? spreadSeconds(asked) : spreadReps(asked));
