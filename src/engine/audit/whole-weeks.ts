/** The weeks of a plan that are not cut off by the end of a clearance or the day a child is due. */
import { dayOfIso } from '../../model/day.js';
import type { Plan, Week } from '../../model/plan.js';

/** A week that ends after the last day for sessions has fewer of them on purpose: nothing is said of what it lacks. */
export function isWhole({ stops }: Pick<Plan, 'stops'>, { begins }: Pick<Week, 'begins'>): boolean {
  const [from, last] = [dayOfIso(begins), stops === undefined ? undefined : dayOfIso(stops.after)];
  return from === undefined || last === undefined || last - from >= 6;
}
