/**
 * Conditioning: longer work against the same rest, or more of it in the same time; rounds stay. How hard is told by
 * breath, never by load alone.
 */

import { spreadMetres, spreadReps, spreadSeconds, spreadSignals, stageOf } from './spread-doses.js';
import type { Asked, DosesOfStage } from './stage-doses.js';

export function conditioningRungs(asked: Asked): DosesOfStage {
  switch (asked.dose.kind) {
    case 'sets':
      return stageOf(spreadReps(asked));
    case 'timed':
      return stageOf(spreadSeconds(asked));
    case 'distance':
      return stageOf(spreadMetres(asked));
    case 'every':
      return spreadSignals(asked);
    default:
      return stageOf([{ kind: 'round' }]);
  }
}
