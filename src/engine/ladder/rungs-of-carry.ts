/** Carries, and travelling on hands and feet: metres or seconds up the range; then load or version. */

import { spreadMetres, spreadSeconds, stageOf } from './spread-doses.js';
import type { Asked, DosesOfStage } from './stage-doses.js';

export const carryRungs = (asked: Asked): DosesOfStage =>
  stageOf(asked.dose.kind === 'distance' ? spreadMetres(asked) : spreadSeconds(asked));
