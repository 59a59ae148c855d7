/**
 * Load of seven days by effort and minutes (session RPE): Foster 1998, Med Sci Sports Exerc 30:1164-1168. The load of a
 * session is its effort of 10 times its minutes; a day without one counts 0. Monotony is the mean of the days over their
 * SD, strain the sum times monotony. The abstract does not say which SD: here it is that of the population; with that of
 * a sample the SD is greater by the root of 7/6, monotony and strain smaller by it.
 */
import type { LoadOfDays } from '../../model/review.js';

/** Of each day the sum of its sessions, or `null` where one of them is not known. Days are told by their place, from 0. */
export function loadOfDays(days: readonly (number | null)[]): LoadOfDays {
  const known = days.filter((load) => load !== null);
  if (known.length < days.length) {
    return { kind: 'not known', days: days.flatMap((load, index) => (load === null ? [index] : [])) };
  }
  const total = known.reduce((sum, load) => sum + load, 0);
  const [first] = known;
  if (known.every((load) => load === first)) return { kind: 'alike', total };
  const mean = total / known.length;
  const squares = known.reduce((sum, load) => sum + (load - mean) ** 2, 0);
  const sd = Math.sqrt(squares / known.length);
  const monotony = mean / sd;
  return { kind: 'known', total, sd, monotony, strain: total * monotony };
}
