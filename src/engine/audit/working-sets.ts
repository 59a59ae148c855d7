/** The working sets of a finished plan, session by session: what counts, of which exercise, and for which side. */

import type { IsoDate } from '../../model/day.js';
import type { Exercise } from '../../model/exercise.js';
import type { Item, Plan } from '../../model/plan.js';

/** So many sets of one exercise in one session. A set of both sides, or of sides in turn, counts for each. */
export interface Worked {
  readonly exercise: Exercise;
  readonly left: number;
  readonly right: number;
}

export interface WorkedSession {
  /** Index of the week in the plan. */
  readonly week: number;
  readonly date: IsoDate;
  readonly worked: readonly Worked[];
  /** Every exercise of the session, warm-up and cool-down too. */
  readonly done: readonly Exercise[];
}

/**
 * Sets of work, trials and tests count. Warm-up and feeler sets, what is optional, mobility, conditioning, and whatever
 * stands in a warm-up or cool-down do not.
 */
export function workingSets(
  { weeks }: Pick<Plan, 'weeks'>,
  exercises: ReadonlyMap<string, Exercise>,
): readonly WorkedSession[] {
  return weeks.flatMap(({ sessions }, week) =>
    sessions.map(({ date, groups }): WorkedSession => {
      const worked: Worked[] = [];
      const done: Exercise[] = [];
      for (const { kind, items } of groups) {
        for (const item of items) {
          const exercise = exercises.get(item.exercise);
          if (exercise !== undefined) done.push(exercise);
          if (kind !== 'warm-up' && kind !== 'cool-down') worked.push(...workedIn(item, exercises));
        }
      }
      return { week, date, worked, done };
    }),
  );
}

const COUNTED: ReadonlySet<string> = new Set(['work', 'trial', 'test']);

function workedIn(item: Item, exercises: ReadonlyMap<string, Exercise>): readonly Worked[] {
  if (item.way === 'mobility' || item.way === 'conditioning') return [];
  const worked: { exercise: Exercise; left: number; right: number }[] = [];
  for (const { kind, optional, exercise: id = item.exercise, side } of item.sets) {
    if (!COUNTED.has(kind) || optional === true) continue;
    const exercise = exercises.get(id);
    if (exercise === undefined) continue;
    let count = worked.find((each) => each.exercise === exercise);
    if (count === undefined) {
      count = { exercise, left: 0, right: 0 };
      worked.push(count);
    }
    if (side !== 'right') count.left += 1;
    if (side !== 'left') count.right += 1;
  }
  return worked;
}
