/** Sets one may fall back on at one place: those of a span of reps that leave the floor. */
import type { Tenths } from '../../model/quantity.js';
import { externalAt, type Place, type Situation } from './situation.js';
import type { Fallback } from './walk-rule.js';

/** Fewest first. `from` and `to` are reps, inclusive. */
export function fallbacksAt(at: Situation, place: Place, toFailure: Tenths, from: number, to: number): Fallback[] {
  const external = externalAt(at.ground, place);
  const fallbacks: Fallback[] = [];
  for (let reps = from; reps <= to; reps += 1) {
    const reserve = toFailure - 10 * reps;
    if (reserve < at.occurrence.floor) break;
    fallbacks.push({ place, reps, reserve, external });
  }
  return fallbacks;
}
