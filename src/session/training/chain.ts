/** Which exercise is easier than which, as far as the plan that travels tells it: by the easier ways it names. */
import type { ClientEasier, ClientItem, ClientPlan } from '../../model/client-plan.js';
import type { ExerciseId } from '../../model/identity.js';

/** An easier way within an exercise is called `exercise#way`: it is still that exercise. */
export const exerciseOf = ({ exercise }: ClientEasier, item: Pick<ClientItem, 'exercise'>): string =>
  exercise?.split('#')[0] ?? item.exercise;

/** Whatever may be asked for in it: as planned, before it is earned, or as a feeler set finds. */
export const exercisesIn = ({ exercise, sets }: ClientItem): readonly ExerciseId[] => [
  exercise,
  ...sets.flatMap((set) => [
    ...(set.exercise === undefined ? [] : [set.exercise]),
    ...[...(set.otherwise ?? []), ...(set.choose ?? [])].map((one) => one.exercise),
  ]),
];

/** Easier ways of it that may be offered: none in which something hurts too much. */
export const waysOf = (item: ClientItem, sore: ReadonlySet<string>): readonly ClientEasier[] =>
  item.easier.filter((way) => !sore.has(exerciseOf(way, item)));

/** The place in the plan's list of the first of them that has figures; -1 where none has. */
export const firstWay = (item: ClientItem, sore: ReadonlySet<string>): number =>
  item.easier.findIndex((way) => way.set !== undefined && !sore.has(exerciseOf(way, item)));

/** Pairs of an exercise and one that is easier. */
function easierIn({ weeks }: Pick<ClientPlan, 'weeks'>): readonly (readonly [string, string])[] {
  const items = weeks.flatMap(({ sessions }) =>
    sessions.flatMap(({ groups }) => groups.flatMap(({ items: own }) => own)),
  );
  return items.flatMap((item) =>
    item.easier.flatMap((way) => {
      const to = exerciseOf(way, item);
      return to === item.exercise ? [] : [[item.exercise, to] as const];
    }),
  );
}

/** These, and all that lead to them over however many steps. */
function reaching(from: Iterable<string>, steps: readonly (readonly [string, string])[]): ReadonlySet<string> {
  const found = new Set(from);
  for (let before = -1; before < found.size; ) {
    before = found.size;
    for (const [one, to] of steps) if (found.has(to)) found.add(one);
  }
  return found;
}

/** With all that is harder. */
export const withHarder = (plan: Pick<ClientPlan, 'weeks'>, of: Iterable<string>): ReadonlySet<string> =>
  reaching(of, easierIn(plan));

/** With all that is easier. */
export const withEasier = (plan: Pick<ClientPlan, 'weeks'>, of: Iterable<string>): ReadonlySet<string> =>
  reaching(
    of,
    easierIn(plan).map(([one, to]) => [to, one] as const),
  );
