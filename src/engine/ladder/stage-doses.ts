/** What one stage's doses are made from, and what they are. Each way of working makes its own. */
import type { Dose } from '../../model/dose.js';
import type { Facts } from '../../model/exercise.js';
import type { RungDose } from '../../model/ladder.js';
import type { Rule } from '../../model/reason.js';

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
