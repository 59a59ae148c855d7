/** The doses of one stage, easiest first, by way of working. Which loads the stages have stands elsewhere. */
import { bandRungs } from './rungs-of-bands.js';
import { carryRungs } from './rungs-of-carry.js';
import { conditioningRungs } from './rungs-of-conditioning.js';
import { holdRungs } from './rungs-of-hold.js';
import { mobilityRungs } from './rungs-of-mobility.js';
import { swingRungs } from './rungs-of-swing.js';
import type { Asked, DosesOfStage } from './stage-doses.js';

export function dosesOf(asked: Asked): DosesOfStage {
  const { way, holds } = asked.facts;
  if (way !== 'swing' && (holds === 'band' || holds === 'assisted')) return bandRungs(asked);
  switch (way) {
    case 'swing':
      return swingRungs(asked);
    case 'hold':
      return holdRungs(asked);
    case 'mobility':
      return mobilityRungs(asked);
    case 'conditioning':
      return conditioningRungs(asked);
    case 'carry':
    case 'strength':
    case 'bodyweight':
    case 'combination':
      return carryRungs(asked);
  }
}
