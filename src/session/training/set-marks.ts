/** What is marked of a set: the count it goes by, the plan's own figures of it, or those that were said. */
import type { ClientSet } from '../../model/client-plan.js';
import { exerciseId } from '../../model/identity.js';
import type { PlanLoad } from '../../model/plan.js';
import type { DifferentScreen } from '../../model/training.js';
import type { SetToday } from './set-today.js';
import type { SetMark } from './told.js';

type Count = DifferentScreen['counts'];

/** The most that a log takes of each. */
const MOST: Readonly<Record<Count, number>> = { reps: 500, seconds: 7200, metres: 10_000 };

/** What a set is counted by: of a timed measure what is done in its time, else what is asked of the exercise. */
export function countOf({ item, figures: { set } }: SetToday): Count {
  if (set.kind === 'test' && item.counts !== undefined) return item.counts;
  const { unit } = item.asked;
  if (set[unit] !== undefined) return unit;
  if (set.seconds !== undefined) return 'seconds';
  return set.metres === undefined ? 'reps' : 'metres';
}

/** What stands marked of it; of one that is not, what is planned. */
export function markedOf(set: SetToday): DifferentScreen['marked'] {
  const { marked } = set.stepped;
  const count = countOf(set);
  const load = marked?.load ?? set.figures.set.load;
  return { amount: marked?.[count] ?? set.figures.set[count] ?? 0, ...heldIn(load) };
}

const heldIn = (load: PlanLoad | undefined): Pick<ClientSet, 'load'> => (load === undefined ? {} : { load });

/** Of one that has been marked, exercise and tempo stay those it was marked with. */
function headOf({ stepped, figures, tempo, extra }: SetToday): Pick<SetMark, 'key' | 'exercise' | 'tempo' | 'done'> {
  const { key, marked } = stepped;
  if (marked !== null && marked.done !== 'left out')
    return { key, exercise: marked.exercise, tempo: marked.tempo, done: marked.done };
  const done = extra === true ? 'extra' : figures.easier === undefined ? 'done' : 'easier';
  return { key, exercise: exerciseId(figures.exercise), tempo, done };
}

/** The plan's own figures: nobody said them. */
export function markAsPlanned(set: SetToday): SetMark {
  const count = countOf(set);
  const amount = set.figures.set[count];
  const counted = amount === undefined ? {} : { [count]: amount };
  return { kind: 'set', ...headOf(set), ...counted, ...heldIn(set.figures.set.load), asPlanned: true };
}

/** A load that is not said is the one that stood there. */
export function markAsSaid(set: SetToday, amount: number, load: PlanLoad | undefined): SetMark {
  const count = countOf(set);
  const whole = Math.min(MOST[count], Math.max(0, Math.round(amount)));
  const held = heldIn(load ?? markedOf(set).load);
  return { kind: 'set', ...headOf(set), [count]: whole, ...held, asPlanned: false };
}

export const markLeftOut = ({ stepped, figures, tempo }: SetToday): SetMark => ({
  kind: 'set',
  key: stepped.key,
  exercise: exerciseId(figures.exercise),
  tempo,
  done: 'left out',
  asPlanned: false,
});
