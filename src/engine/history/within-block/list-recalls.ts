/** What marks and observations say of each exercise, as the plan lists it among its inputs. */
import { isoOfDay } from '../../../model/day.js';
import { compareIds } from '../../../model/identity.js';
import type { RecallInput } from '../../../model/plan.js';
import type { Recalls } from '../recall.js';

/** By id of the exercise. */
export function listRecalls(recalls: Recalls): readonly RecallInput[] {
  return [...recalls]
    .sort(([a], [b]) => compareIds(a, b))
    .map(([exercise, { last, hold, floor, tempo, lighter, earned, weak, side }]): RecallInput => {
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
        ...(hold === null ? {} : { hold: { until: isoOfDay(hold.until), why: hold.why, maxReps: hold.maxReps } }),
        ...(floor === null
          ? {}
          : { floor: { until: isoOfDay(floor.until), reserve: floor.reserve, rule: floor.rule } }),
        ...(tempo === null ? {} : { tempo }),
        lighter,
        earned,
        weak,
        ...(side === null ? {} : { side }),
      };
    });
}
