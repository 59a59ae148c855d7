/** The doses of one stage, easiest first, by way of working. Which loads the stages have stands elsewhere. */
import type { Dose } from '../../model/dose.js';
import type { Facts } from '../../model/exercise.js';
import type { RungDose } from '../../model/ladder.js';
import type { Rule } from '../../model/reason.js';
import { bandRungs } from './rungs-of-bands.js';
import { carryRungs } from './rungs-of-carry.js';
import { conditioningRungs } from './rungs-of-conditioning.js';
import { holdRungs } from './rungs-of-hold.js';
import { mobilityRungs } from './rungs-of-mobility.js';
import { swingRungs } from './rungs-of-swing.js';

/** What the doses of a stage are made from. */
export interface Asked {
  readonly dose: Dose;
  readonly facts: Facts;
  /** The movement is new to the client: fast lifts begin from a dead stop. */
  readonly fresh: boolean;
  /** There is a load above that the set may end with. */
  readonly nextUp: boolean;
  readonly inForce: (rule: Rule) => number;
}

export interface DoseOfRung {
  readonly dose: RungDose;
  readonly deadStop: boolean;
}

/** What one way of working makes of a dose. */
export interface DosesOfStage {
  /** Easiest first, at least one; none asks for more than the programme does. */
  readonly doses: readonly DoseOfRung[];
  /** Where a client who knows the movement and the load begins. */
  readonly known: number;
}

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
