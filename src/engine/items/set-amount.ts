/** How much one set of a walked row is, as its dose is written: reps, the seconds they fill, or steps up to them. */
import type { Dose } from '../../model/dose.js';
import type { Exercise } from '../../model/exercise.js';
import type { PlanSet } from '../../model/plan.js';
import type { TempoStep } from '../../model/programme.js';
import { sumOfSteps } from '../rows/planned-by.js';
import type { Rulebook } from '../rulebook.js';
import { secondsOfRep } from '../sessions/seconds-of-rep.js';
import { type Dosing, easierHold, isCountedInReps } from './easier-dose.js';

export type SetAmount = Pick<PlanSet, 'reps' | 'seconds' | 'steps'>;
export type AmountOf = (reps: number, exercise: Exercise, tempo: TempoStep) => SetAmount;

/**
 * Of a hold as long as `easier-dose` says, whatever the reps. Of what else is not counted in reps, and of mobility on the clock: as many seconds as
 * the reps of `own` would take. Timed: also the seconds they take. Steps: as written, the longest of them cut until their sum, once through, is no
 * more than `reps`; what is left of them as one is a plain set.
 */
export function amountIn(context: Dosing, dose: Dose, own: Exercise): AmountOf {
  const { rules } = context;
  const counted = amountCounted(dose, rules);
  return (reps, exercise, tempo) => {
    const { way } = exercise.facts;
    if (way === 'hold') return { seconds: easierHold(context, exercise) };
    const onTheClock = way === 'mobility' && dose.kind === 'timed';
    if (isCountedInReps(context, exercise) && !onTheClock) return counted(reps, exercise, tempo);
    return { seconds: reps * secondsOfRep(own.facts.tempo, 'normal', rules) };
  };
}

function amountCounted(dose: Dose, rules: Rulebook): AmountOf {
  if (dose.kind === 'timed') {
    return (reps, { facts }, tempo) => ({ reps, seconds: reps * secondsOfRep(facts.tempo, tempo, rules) });
  }
  if (dose.kind === 'steps') {
    return (reps) => {
      const steps = stepsWithin(dose.reps, reps);
      return { reps: sumOfSteps(steps), ...(steps.length > 1 ? { steps } : {}) };
    };
  }
  return (reps) => ({ reps });
}

/** The highest limit to a step with which they fit; the reps that it leaves over go one each to the longest. */
function stepsWithin(steps: readonly number[], reps: number): readonly number[] {
  if (sumOfSteps(steps) <= reps) return steps;
  const limited = (most: number): readonly number[] => steps.map((step) => Math.min(step, most));
  let most = 0;
  while (sumOfSteps(limited(most + 1)) <= reps) most += 1;
  const cut = limited(most);
  const longest = steps.map((_, index) => index).sort((a, b) => (steps[b] ?? 0) - (steps[a] ?? 0) || a - b);
  const more = new Set(longest.slice(0, reps - sumOfSteps(cut)));
  return cut.map((step, index) => step + (more.has(index) ? 1 : 0)).filter((step) => step > 0);
}
