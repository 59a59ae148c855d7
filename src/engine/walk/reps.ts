/** The reps of a set at a place: in the range, below it where an easy week or the floor says so, or none. */
import type { Tenths } from '../../model/quantity.js';
import type { Rule } from '../../model/reason.js';
import { easyLeast } from '../rules/walk-easy-least.js';
import { fewest } from '../rules/walk-fewest.js';
import { range } from '../rules/walk-range.js';
import { bottomOf, type Place, predictedAt, type Situation, topOf } from './situation.js';
import type { SortedRules } from './sorted-rules.js';
import type { Fall, Fallback } from './walk-rule.js';

export interface Reps {
  readonly place: Place;
  readonly reps: number;
  readonly reserve: Tenths;
  /** The rule that forbids one rep more, or made it fall. */
  readonly because: Rule;
  /** What was given up to find any reps at all, by rule id. */
  readonly relaxed: readonly string[];
  readonly fell: Fall['named'] | null;
}

const NOTHING: readonly string[] = [];

/** Work week: the most in the range within every limit; else its fewest that leave the floor; else a fallback. */
export function workReps(at: Situation, book: SortedRules): Reps | null {
  const { place } = at;
  const toFailure = predictedAt(at, place.version, place.load, place.tempo);
  const bottom = bottomOf(at);
  let reps = topOf(at);
  let because: Rule = range.row;
  let leastByFloor = Number.MAX_SAFE_INTEGER;
  for (const each of book.workLimits) {
    const most = each.most(at, place, toFailure);
    if (each.row.id === FLOOR) leastByFloor = most;
    if (most < reps) {
      reps = most;
      because = each.row;
    }
  }
  if (reps >= bottom) return { place, reps, reserve: toFailure - 10 * reps, because, relaxed: NOTHING, fell: null };
  if (book.has('walk-fewest') && leastByFloor >= bottom) {
    const reserve = toFailure - 10 * bottom;
    return { place, reps: bottom, reserve, because: fewest.row, relaxed: [because.id], fell: null };
  }
  return fallBack(at, book);
}

const FLOOR = 'walk-floor';

/** Easy week: the last work option, with reps capped by what was last done. */
export function easyReps(at: Situation, book: SortedRules): Reps | null {
  const { place } = at;
  const toFailure = predictedAt(at, place.version, place.load, place.tempo);
  const depth = book.has('walk-easy-depth') ? 2 : 0;
  const least = Math.max(1, bottomOf(at) - depth);
  let cap = topOf(at);
  let reps = cap;
  let because: Rule = range.row;
  for (const each of book.easyLimits) {
    const most = each.most(at, place, toFailure);
    if (most < reps) {
      reps = most;
      because = each.row;
    }
    if (each.row.id !== FLOOR && each.row.id !== 'walk-easy-asked') cap = Math.min(cap, most);
  }
  if (reps >= least) return { place, reps, reserve: toFailure - 10 * reps, because, relaxed: NOTHING, fell: null };
  const few = Math.min(cap, least);
  const reserve = toFailure - 10 * few;
  if (book.has('walk-easy-least') && (reserve >= at.occurrence.floor || !book.has(FLOOR))) {
    return { place, reps: few, reserve, because: easyLeast.row, relaxed: ['walk-easy-asked'], fell: null };
  }
  return fallBack(at, book);
}

/** None in the range leaves the floor: the best of what does. `null` where nothing does. */
function fallBack(at: Situation, book: SortedRules): Reps | null {
  for (const turn of [1, 2]) {
    let best: Fallback | null = null;
    let chosen: Fall | null = null;
    for (const fall of book.falls) {
      if (fall.turn !== turn) continue;
      for (const offer of fall.offers(at)) {
        if (best !== null && !comesFirst(at, book, offer, best)) continue;
        best = offer;
        chosen = fall;
      }
    }
    if (best !== null && chosen !== null) {
      const { place, reps, reserve } = best;
      const relaxed = relaxedBy(at, best, chosen);
      return { place, reps, reserve, because: chosen.row, relaxed, fell: chosen.named };
    }
  }
  return null;
}

function comesFirst(at: Situation, book: SortedRules, a: Fallback, b: Fallback): boolean {
  for (const preference of book.preferences) {
    const order = preference.compare(at, a, b);
    if (order !== 0) return order < 0;
  }
  return false;
}

function relaxedBy(at: Situation, best: Fallback, fell: Fall): readonly string[] {
  const relaxed: string[] = [fell.row.id];
  if (best.reserve < at.occurrence.asked - at.ground.values.tolerance) relaxed.push('walk-asked');
  return relaxed;
}
