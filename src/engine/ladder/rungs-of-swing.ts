/**
 * Swing work and other fast lifts: total reps, then density, then load. A set never has more reps than keep their
 * quality; a movement that is new begins with few reps, each from a dead stop.
 */
import type { RungDose } from '../../model/ladder.js';
import type { Seconds } from '../../model/quantity.js';
import { DEAD_STOP_REPS } from '../rules/dead-stop-reps.js';
import { NEXT_UP_FIRST } from '../rules/next-up-first.js';
import { SECONDS_A_SWING } from '../rules/seconds-a-swing.js';
import { SWING_CAP } from '../rules/swing-cap.js';
import { partOf, spread, spreadReps, spreadSeconds, spreadSignals, stageOf } from './spread-doses.js';
import type { Asked, DoseOfRung, DosesOfStage } from './stage-doses.js';

/** Most reps of one set: the exercise's own, else the common cap. */
export const mostOfSwing = ({ facts, inForce }: Pick<Asked, 'facts' | 'inForce'>): number =>
  facts.mostReps ?? inForce(SWING_CAP);

export function swingRungs(asked: Asked): DosesOfStage {
  const stage = ordinary(asked);
  const [first] = stage.doses;
  if (!asked.fresh || first === undefined) return stage;
  return { doses: [fromDeadStop(first.dose, asked), ...stage.doses], known: stage.known + 1 };
}

function ordinary(asked: Asked): DosesOfStage {
  const { dose, nextUp, inForce } = asked;
  const most = mostOfSwing(asked);
  switch (dose.kind) {
    case 'sets':
      return stageOf(spreadReps(asked, most));
    case 'timed':
      return stageOf(spreadSeconds(asked, secondsOf(most, asked)));
    case 'every':
      return spreadSignals(asked, most);
    case 'main-next': {
      const main = Math.min(dose.main, most);
      if (!nextUp) return stageOf([{ kind: 'reps', reps: main }]);
      const next = Math.min(dose.next, most);
      const heavier = spread(partOf(next, inForce(NEXT_UP_FIRST)), next, 1);
      return stageOf(heavier.map((count) => ({ kind: 'main-next', main, next: count })));
    }
    case 'steps':
      return stageOf(shorterFirst(dose.reps.map((reps) => Math.min(reps, most))));
    case 'distance':
    case 'rounds':
      return stageOf([{ kind: 'round' }]);
  }
}

/** At the published pace of swings, pauses included. */
const secondsOf = (reps: number, { inForce }: Asked): Seconds => Math.floor((reps * inForce(SECONDS_A_SWING)) / 10);

/** Without the longest step, and then with it. */
function shorterFirst(reps: readonly number[]): readonly RungDose[] {
  const longest = reps.lastIndexOf(Math.max(...reps));
  const shorter = reps.filter((_, index) => index !== longest);
  return shorter.length === 0 ? [inSteps(reps)] : [inSteps(shorter), inSteps(reps)];
}

/** A single step is a plain set. */
const inSteps = (reps: readonly number[]): RungDose =>
  reps.length > 1 ? { kind: 'steps', reps } : { kind: 'reps', reps: reps[0] ?? 1 };

/** No more reps than the first rung has; by the signal it stays so. */
function fromDeadStop(first: RungDose, asked: Asked): DoseOfRung {
  const most = Math.min(asked.inForce(DEAD_STOP_REPS), mostOfSwing(asked));
  if (first.kind === 'every') return { dose: { ...first, reps: Math.min(most, first.reps) }, deadStop: true };
  return { dose: { kind: 'reps', reps: Math.min(most, repsIn(first, asked)) }, deadStop: true };
}

/** Reps of a set of it; of seconds, those that fit at the published pace. */
function repsIn(dose: RungDose, { inForce }: Asked): number {
  switch (dose.kind) {
    case 'reps':
    case 'every':
      return dose.reps;
    case 'main-next':
      return dose.main;
    case 'steps':
      return dose.reps.reduce((sum, reps) => sum + reps, 0);
    case 'seconds':
      return Math.max(1, Math.floor((dose.seconds * 10) / inForce(SECONDS_A_SWING)));
    case 'metres':
    case 'round':
      return 1;
  }
}
