/** How many reps of an exercise fit between one signal and the next, with as much rest as work. */
import type { Dose } from '../../model/dose.js';
import type { Exercise } from '../../model/exercise.js';
import type { BlockContext } from '../block-context.js';
import { SECONDS_A_SWING } from '../rules/seconds-a-swing.js';
import { SIGNAL_WORK } from '../rules/signal-work.js';
import { SWING_CAP } from '../rules/swing-cap.js';
import { secondsOfRep } from '../sessions/seconds-of-rep.js';

type Signals = Extract<Dose, { readonly kind: 'every' }>;

/** At the exercise's own tempo; one side a signal, turn about, where one is done at a time. 0 where not even one fits. */
export function fitsAtSignal(exercise: Exercise, dose: Signals, context: BlockContext): number {
  const work = dose.everySeconds * context.rules.valueOf(SIGNAL_WORK);
  return Math.floor(work / (100 * tenthsAtSignal(exercise, context)));
}

/** What is done at a signal: of fast lifts never more than keep their quality, whatever is written. */
export function repsAtSignal({ facts }: Exercise, { reps }: Signals, { rules }: BlockContext): number {
  return facts.way === 'swing' ? Math.min(reps, facts.mostReps ?? rules.valueOf(SWING_CAP)) : reps;
}

/** Tenths of a second a rep. */
function tenthsAtSignal({ facts }: Exercise, { rules, exercises }: BlockContext): number {
  const { lower, bottom, lift, top } = facts.tempo;
  const hasFigures = lower + bottom + top > 0 || lift === 'fast' || lift > 0;
  const own =
    facts.way === 'swing' && !hasFigures
      ? rules.valueOf(SECONDS_A_SWING)
      : 10 * secondsOfRep(facts.tempo, 'normal', rules);
  const parts = facts.parts.flatMap((id) => exercises.get(id) ?? []);
  const inParts = parts.reduce((sum, part) => sum + 10 * secondsOfRep(part.facts.tempo, 'normal', rules), 0);
  return Math.max(own, inParts);
}
