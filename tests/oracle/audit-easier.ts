/**
 * How much is asked of an easier version that is counted otherwise than the row it stands beside: no hold longer than anything
 * the client's programme asks of it, and what is counted in reps in reps.
 */
import type { ExerciseFacts } from './audit-facts.js';
import { type PlanItem, type PlanJson, workOf } from './plan-json.js';

/** A row of the client's programme that is counted in seconds. */
export interface TimedRow {
  readonly exercise: string;
  readonly longest: number;
}

const IN_REPS = ['strength', 'bodyweight', 'combination', 'swing'];

export function auditEasierDoses(
  plan: PlanJson,
  exercises: readonly ExerciseFacts[],
  timed: readonly TimedRow[],
): string[] {
  const named = (id: string) =>
    exercises.find((one) => one.id === id) ?? exercises.find(({ formerIds }) => formerIds.includes(id));
  const short = plan.rules.find(({ id }) => id === 'easier-hold');
  const least = short?.overridden?.value ?? short?.value ?? 0;
  const longestOf = (own: PlanItem, held: ExerciseFacts): number => {
    const asked = timed.filter(({ exercise }) => named(exercise) === held).map(({ longest }) => longest);
    const alike = own.way === 'hold' && own.asked.unit === 'seconds' ? [own.asked.min] : [];
    return Math.max(least, ...asked, ...alike);
  };
  return workOf(plan).flatMap(({ item }) =>
    item.easier.flatMap((easier): string[] => {
      const to = easier.exercise?.includes('#') === false ? named(easier.exercise) : undefined;
      if (to === undefined) return [];
      const { way } = to.facts;
      const found = easier.sets.flatMap(({ reps, seconds, metres }) => {
        if (way === 'hold') {
          const most = longestOf(item, to);
          if (reps !== undefined) return ['a hold counted in reps'];
          return (seconds ?? 0) > most ? [`held for ${seconds} s, and nothing asks more than ${most} s of it`] : [];
        }
        const onTheClock = IN_REPS.includes(item.way) && item.asked.unit === 'seconds';
        if (!IN_REPS.includes(way) || onTheClock || metres !== undefined) return [];
        const wants = item.way === 'hold' || seconds !== undefined;
        return wants && reps === undefined ? [`counted in reps, and asked for ${seconds} s`] : [];
      });
      return [...new Set(found)].map((text) => `${item.id}: ${easier.exercise}: ${text}`);
    }),
  );
}
