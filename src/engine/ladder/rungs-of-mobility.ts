/** Mobility: one rung, the least of the range, the same every week. */
import type { RungDose } from '../../model/ladder.js';
import { stageOf } from './spread-doses.js';
import type { Asked, DosesOfStage } from './stage-doses.js';

export const mobilityRungs = ({ dose }: Asked): DosesOfStage => stageOf([fixed(dose)]);

function fixed(dose: Asked['dose']): RungDose {
  switch (dose.kind) {
    case 'sets':
      return { kind: 'reps', reps: dose.reps.min };
    case 'timed':
      return { kind: 'seconds', seconds: dose.seconds.min };
    default:
      return { kind: 'round' };
  }
}
