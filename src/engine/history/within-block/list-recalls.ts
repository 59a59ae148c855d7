/** What marks and observations say of each exercise, as the plan lists it among its inputs. */
import { isoOfDay } from '../../../model/day.js';
import { compareIds } from '../../../model/identity.js';
import type { RecallInput } from '../../../model/plan-inputs.js';
import type { Recall, Recalls } from '../recall.js';

/** By id of the exercise. */
export function listRecalls(recalls: Recalls): readonly RecallInput[] {
  return [...recalls]
    .sort(([a], [b]) => compareIds(a, b))
    .map(([exercise, recall]): RecallInput => {
      const { last, leave, hold, floor, tempo, sore, earned, weak, side } = recall;
      const rows = rowsOf(recall);
      const worked = last === null ? null : { ...last, date: isoOfDay(last.day) };
      return {
        exercise,
        ...(worked === null
          ? {}
          : {
              last: {
                date: worked.date,
                grams: worked.grams,
                tempo: worked.tempo,
                reps: worked.reps,
                earned: worked.earned,
                greatest: worked.greatest,
              },
            }),
        ...(rows.length === 0 ? {} : { rows }),
        ...(leave === null ? {} : { leave: { from: isoOfDay(leave.from), where: leave.where, side: leave.side } }),
        ...(hold === null ? {} : { hold: { until: isoOfDay(hold.until), why: hold.why, maxReps: hold.maxReps } }),
        ...(floor === null
          ? {}
          : { floor: { until: isoOfDay(floor.until), reserve: floor.reserve, rule: floor.rule } }),
        ...(tempo === null ? {} : { tempo }),
        lighter: Math.max(recall.lighter, sore?.lighter ?? 0),
        earned,
        weak,
        ...(side === null ? {} : { side }),
      };
    });
}

/** Walked rows first, each by its name. */
function rowsOf({ lastIn, rungIn }: Recall): NonNullable<RecallInput['rows']> {
  const byName = <T>(ends: ReadonlyMap<string, T>): readonly (readonly [string, T])[] =>
    [...ends].sort(([a], [b]) => compareIds(a, b));
  return [
    ...byName(lastIn).map(([row, { day, earned, tops, lighter, grams }]) => {
      return { row, date: isoOfDay(day), earned, ...(tops === earned ? {} : { tops }), lighter, grams };
    }),
    ...byName(rungIn).map(([row, { day, earned, lighter }]) => ({ row, date: isoOfDay(day), earned, lighter })),
  ];
}
