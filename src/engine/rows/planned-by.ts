/**
 * Whether a row is walked, by reps to failure, or goes up a ladder of rungs; and how many sets and reps its dose is.
 * What either of them makes of it stands with them.
 */
import type { Dose } from '../../model/dose.js';
import type { Facts, Way } from '../../model/exercise.js';
import type { Range } from '../../model/quantity.js';

export type Planned = 'walk' | 'ladder';
type DoseKind = Dose['kind'];

const WALKED: readonly Way[] = ['strength', 'bodyweight', 'combination'];
const BANDED: readonly DoseKind[] = ['sets', 'timed'];

/** What each way takes besides what is walked. */
const RUNGS: Readonly<Record<Way, readonly DoseKind[]>> = {
  strength: [],
  combination: [],
  bodyweight: ['distance'],
  swing: ['sets', 'timed', 'every', 'main-next', 'steps'],
  hold: ['sets', 'timed'],
  carry: ['timed', 'distance'],
  mobility: ['sets', 'timed', 'rounds'],
  conditioning: ['sets', 'timed', 'distance', 'every', 'rounds'],
};
const WALKS: readonly DoseKind[] = ['sets', 'timed', 'every', 'steps'];

/** Reps to failure say nothing of a band, whose pull changes with its length. */
const isBanded = ({ holds }: Facts): boolean => holds === 'band' || holds === 'assisted';

/** Whether an exercise is walked at all, whatever the dose. */
export const isWalked = (facts: Facts): boolean => WALKED.includes(facts.way) && !isBanded(facts);

/** `null` where an exercise of this way is not done by such a dose. */
export function plannedBy(facts: Facts, dose: Dose): Planned | null {
  if (isBanded(facts)) return BANDED.includes(dose.kind) ? 'ladder' : null;
  if (isWalked(facts) && WALKS.includes(dose.kind)) return 'walk';
  return RUNGS[facts.way].includes(dose.kind) ? 'ladder' : null;
}

/** The kinds of dose an exercise takes, in the order of the doses. */
export const dosesFor = (facts: Facts): readonly DoseKind[] =>
  (['sets', 'timed', 'distance', 'every', 'main-next', 'steps', 'rounds'] as const).filter((kind) => {
    if (isBanded(facts)) return BANDED.includes(kind);
    return (isWalked(facts) && WALKS.includes(kind)) || RUNGS[facts.way].includes(kind);
  });

/** Sets before any share of a week: signals of `every`, times through of `steps`, rounds. */
export function setsOf(dose: Dose): number {
  switch (dose.kind) {
    case 'sets':
    case 'timed':
    case 'distance':
      return dose.sets;
    case 'every':
      return Math.max(1, Math.floor((60 * dose.minutes) / dose.everySeconds));
    case 'steps':
      return dose.times;
    case 'rounds':
      return dose.rounds;
    case 'main-next':
      return 1;
  }
}

/**
 * The range of reps that a walk plans within: as written; the reps that fit the seconds, at least one; those of each
 * signal; of steps all of them together, since no rest stands between them. `null` for a dose that no walk takes.
 * @param secondsARep at the exercise's own tempo
 */
export function repsOf(dose: Dose, secondsARep: number): Range | null {
  switch (dose.kind) {
    case 'sets':
      return dose.reps;
    case 'timed': {
      const within = (seconds: number): number => Math.max(1, Math.floor(seconds / secondsARep));
      return { min: within(dose.seconds.min), max: within(dose.seconds.max) };
    }
    case 'every':
      return { min: dose.reps, max: dose.reps };
    case 'steps': {
      const together = Math.max(1, sumOfSteps(dose.reps));
      return { min: together, max: together };
    }
    default:
      return null;
  }
}

/** Reps of rising or falling reps, once through. */
export const sumOfSteps = (steps: readonly number[]): number => steps.reduce((sum, step) => sum + step, 0);

/** The next set comes before the breath is back: in a circuit, at every signal, from one step to the next. */
export const isHurried = ({ inCircuit, dose }: { readonly inCircuit: boolean; readonly dose: Dose }): boolean =>
  inCircuit || dose.kind === 'every' || dose.kind === 'steps';
