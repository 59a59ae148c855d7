/** How much one set of a walked row is, as its dose is written: reps, the seconds they fill, or steps up to them. */
import type { Dose } from '../../model/dose.js';
import type { Exercise, Way } from '../../model/exercise.js';
import type { PlanSet } from '../../model/plan.js';
import type { TempoStep } from '../../model/programme.js';
import type { Rulebook } from '../rulebook.js';
import { secondsOfRep } from '../sessions/seconds-of-rep.js';

export type SetAmount = Pick<PlanSet, 'reps' | 'seconds' | 'steps'>;
export type AmountOf = (reps: number, exercise: Exercise, tempo: TempoStep) => SetAmount;

const COUNTED: readonly Way[] = ['strength', 'bodyweight', 'combination', 'swing'];

/**
 * Of what is not counted in reps: as many seconds as the reps of `own` would take. Timed: also the seconds they take. Steps: none longer than `reps`, and as reps their sum, once through.
 */
export function amountIn(dose: Dose, own: Exercise, rules: Rulebook): AmountOf {
  const counted = amountCounted(dose, rules);
  return (reps, exercise, tempo) => {
    if (COUNTED.includes(exercise.facts.way)) return counted(reps, exercise, tempo);
    return { seconds: reps * secondsOfRep(own.facts.tempo, 'normal', rules) };
  };
}

function amountCounted(dose: Dose, rules: Rulebook): AmountOf {
  if (dose.kind === 'timed') {
    return (reps, { facts }, tempo) => ({ reps, seconds: reps * secondsOfRep(facts.tempo, tempo, rules) });
  }
  if (dose.kind === 'steps') {
    return (reps) => {
      const steps = dose.reps.map((step) => Math.min(step, reps));
      return { reps: steps.reduce((sum, step) => sum + step, 0), steps };
    };
  }
  return (reps) => ({ reps });
}
