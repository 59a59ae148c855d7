/**
 * What a simulated body can really do. Reps to failure follow the linear form of Epley's equation that the planner uses,
 * with the person's own capacity in the place of the tested one: what is simulated is not the equation's error but the
 * person's. Written apart from the engine, in its own words.
 */

import type { Side } from '../../src/model/identity.js';
import type { Plan, PlanLoad } from '../../src/model/plan.js';
import type { Person } from './people.js';

export interface Body {
  /** Reps to failure with this load, fresh, on an average day of a calendar week from 1. */
  readonly repsToFailure: (exercise: string, side: Side | 'both', load: PlanLoad | undefined, week: number) => number;
}

/** Weeks in which a person trained before this one: a week away loses what a week of training won. */
function trained(person: Person, week: number): number {
  let weeks = 0;
  for (let one = 1; one < week; one += 1) weeks += person.away.includes(one) ? -1.5 : 1;
  return weeks;
}

/** Nobody counts reps of it: easy enough for anything that is asked. */
const EASY = 25;

/** `first` is the plan of the first edition: it quotes the tests. */
export function bodyOf(person: Person, first: Plan): Body {
  const { capacities, shares, bodyMass } = first.inputs;
  const share = (exercise: string): number => shares.find((one) => one.exercise === exercise)?.share ?? 0;
  return {
    repsToFailure: (exercise, side, load, week) => {
      const own = capacities.filter((one) => one.exercise === exercise);
      const tested = own.find((one) => one.side === side || one.side === 'both') ?? own[0] ?? kin(exercise, capacities);
      if (tested === undefined) return EASY;
      const held = (load?.pieces ?? []).reduce((sum, { grams }) => sum + grams, 0);
      const resisted = held + ((share(exercise) || SHARES[exercise] || 0) * (bodyMass ?? 0)) / 1000;
      const grown = 1 + (person.growth * trained(person, week)) / 1000;
      const k = tested.k * (person.truth / 1000) * grown * (side === 'left' ? person.leftSide / 1000 : 1);
      return resisted === 0 ? EASY : (k / resisted - 300) / 10;
    },
  };
}

/** Of what was never tested, whose strength stands for it: a squat to a chair is a squat. */
const KIN: Readonly<Record<string, string>> = {
  'chair-squat': 'goblet-squat',
  'box-squat': 'goblet-squat',
  'knee-push-up': 'push-up',
};
/** As the library has them, where a first plan did not quote them. */
const SHARES: Readonly<Record<string, number>> = { 'chair-squat': 878, 'box-squat': 878, 'knee-push-up': 490 };

const kin = (exercise: string, capacities: Plan['inputs']['capacities']) =>
  capacities.find((one) => one.exercise === KIN[exercise]);
