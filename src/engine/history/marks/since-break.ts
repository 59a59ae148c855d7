/** What was done before a break says nothing beside what was done after it. */
import type { Day } from '../../../model/day.js';
import { joinBreaks } from '../../breaks/join-breaks.js';
import { STRENGTH_KEPT } from '../../rules/strength-kept.js';
import { STRENGTH_KEPT_OLDER } from '../../rules/strength-kept-older.js';
import type { Remembering } from '../recall.js';

/** Of those given, whichever are of the newest one's day or with no break between it and them; in the order given. */
export function sinceBreak<T>(
  { client, rules }: Pick<Remembering, 'client' | 'rules'>,
  all: readonly T[],
  dayOf: (one: T) => Day,
): readonly T[] {
  const least = Math.min(rules.valueOf(STRENGTH_KEPT), rules.valueOf(STRENGTH_KEPT_OLDER));
  const newest = Math.max(...all.map(dayOf));
  const breaks = joinBreaks({ client, rules });
  return all.filter((one) =>
    breaks.every(({ from, until }) => {
      const first = Math.max(from, dayOf(one));
      const last = Math.min(until, newest - 1);
      return last - first + 1 < least;
    }),
  );
}
