/** The sets of one item of a ladder, one by one: rounds × sides, weaker side first. */
import type { Sides } from '../../model/exercise.js';
import { type Side, setKey } from '../../model/identity.js';
import type { LadderInput, Rung, RungDose } from '../../model/ladder.js';
import type { GateNeeds, OtherwiseSet, PlanSet } from '../../model/plan.js';
import { invariant } from '../../model/result.js';
import type { SetPlace } from '../items/plan-item-sets.js';
import { loadPart, planRungLoad } from './ladder-load.js';
import type { LadderStep } from './ladder-step.js';

/** What one set asks for. */
type Amount = Pick<PlanSet, 'reps' | 'seconds' | 'metres' | 'steps'>;

export function amountOf(dose: RungDose): Amount {
  switch (dose.kind) {
    case 'reps':
    case 'every':
      return { reps: dose.reps };
    case 'seconds':
      return { seconds: dose.seconds };
    case 'metres':
      return { metres: dose.metres };
    case 'main-next':
      return { reps: dose.main };
    case 'steps':
      return { reps: dose.reps.reduce((sum, reps) => sum + reps, 0), steps: dose.reps };
    case 'round':
      return {};
  }
}

const signalsIn = ({ dose }: Rung): number | null =>
  dose.kind === 'every' ? Math.max(1, Math.floor((60 * dose.minutes) / dose.everySeconds)) : null;

/**
 * Rounds of work. By the signal: the rung's signals, in the part that `sets` are of those of the longest rung; on one
 * side at a time one signal each, turn about, and so an even number of them, at least two.
 */
function roundsOf({ rungs }: LadderInput, at: number, sets: number, sides: Sides): number {
  const rung = rungs[at];
  invariant(rung !== undefined, 'a ladder stays on its rungs');
  const signals = signalsIn(rung);
  if (signals === null) return sets;
  const longest = Math.max(...rungs.map((each) => signalsIn(each) ?? 0));
  const planned = Math.max(1, Math.floor((signals * sets) / longest));
  return sides === 'each' ? Math.max(1, Math.floor(planned / 2)) : planned;
}

/** The first set carries the gate and what to do otherwise. */
export function ladderSets(place: SetPlace, ladder: LadderInput, step: LadderStep, sides: Sides): readonly PlanSet[] {
  const rung = rungAt(ladder, step.rung);
  const rounds = roundsOf(ladder, step.rung, step.sets, sides);
  const { gate, otherwise } = step;
  const sets: PlanSet[] = [];
  for (let round = 1; round <= rounds; round += 1) {
    for (const side of place.sides) sets.push(setOf(place, rung, round, side));
  }
  const needs =
    gate === undefined ? {} : { gate: { needs: needsOf(rungAt(ladder, gate.needs.rung), gate.needs.weeks) } };
  const other = otherwise === undefined ? {} : { otherwise: [otherwiseOf(ladder, otherwise, sides)] };
  return sets.map((set, index) => (index === 0 ? { ...set, ...needs, ...other } : set));
}

function setOf({ block, occurrence, row }: SetPlace, rung: Rung, round: number, side: Side | 'both'): PlanSet {
  const { dose, load, deadStop } = rung;
  return {
    key: setKey({ block, occurrence, row, side, kind: 'work', ordinal: round }),
    kind: 'work',
    round,
    ...amountOf(dose),
    ...thenOf(rung),
    ...(deadStop ? { deadStop: true } : {}),
    ...(side === 'both' ? {} : { side }),
    ...loadPart(load),
  };
}

/** Its name in the plan; a plain `then` in an object would be taken for a promise's. */
const THEN = 'then';

/** Straight after it, so many with the next load up. */
const thenOf = ({ dose, nextUp }: Rung): Pick<PlanSet, 'then'> =>
  dose.kind === 'main-next' && nextUp !== null ? { [THEN]: { reps: dose.next, load: planRungLoad(nextUp) } } : {};

export function rungAt({ rungs }: LadderInput, at: number): Rung {
  const rung = rungs[at];
  invariant(rung !== undefined, 'a ladder stays on its rungs');
  return rung;
}

function needsOf(rung: Rung, weeks: readonly number[]): GateNeeds {
  return { exercise: rung.exercise, ...loadPart(rung.load), ...amountOf(rung.dose), ...thenOf(rung), weeks };
}

function otherwiseOf(
  ladder: LadderInput,
  { rung: at, sets }: { readonly rung: number; readonly sets: number },
  sides: Sides,
): OtherwiseSet {
  const rung = rungAt(ladder, at);
  return {
    exercise: rung.exercise,
    ...amountOf(rung.dose),
    ...thenOf(rung),
    ...loadPart(rung.load),
    tempo: 'normal',
    sets: roundsOf(ladder, at, sets, sides),
  };
}
