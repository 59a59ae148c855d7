/** The reps of a set at a place: in the range, below it where an easy week or the floor says so, or none. */
import type { Tenths } from '../../model/quantity.js';
import type { Rule } from '../../model/reason.js';
import { easyDepth } from '../rules/walk-easy-depth.js';
import { easyLeast } from '../rules/walk-easy-least.js';
import { fewest } from '../rules/walk-fewest.js';
import { heldReps } from '../rules/walk-held-reps.js';
import { range } from '../rules/walk-range.js';
import { bottomOf, capOf, type Place, predictedAt, type Situation, topOf } from './situation.js';
import type { SortedRules } from './sorted-rules.js';
import type { Fall, Fallback, Limit } from './walk-rule.js';

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

/**
 * Work week: the most in the range within every limit; else its fewest that leave the floor; else a fallback.
 * `atBottom`, where there is one, begins with the fewest of the range.
 */
export function workReps(at: Situation, place: Place, rules: SortedRules, atBottom: Rule | null): Reps | null {
  const toFailure = predictedAt(at, place.version, place.load, place.tempo);
  const bottom = bottomOf(at);
  let reps = atBottom === null ? topOf(at) : bottom;
  let because: Rule = atBottom ?? rangeRow(at);
  let leastByFloor = Number.MAX_SAFE_INTEGER;
  for (const each of rules.workLimits) {
    const most = each.most(at, place, toFailure);
    if (each.row.id === FLOOR) leastByFloor = most;
    if (most < reps) {
      reps = most;
      because = each.row;
    }
  }
  if (reps >= bottom) return { place, reps, reserve: toFailure - 10 * reps, because, relaxed: NOTHING, fell: null };
  if (at.ground.habits.fewest && leastByFloor >= bottom) {
    const reserve = toFailure - 10 * bottom;
    return {
      place,
      reps: bottom,
      reserve,
      because: fewest.row,
      relaxed: broken(at, rules.workLimits, place, toFailure, bottom),
      fell: null,
    };
  }
  return fallBack(at, rules, rules.workLimits);
}

const FLOOR = 'walk-floor';

/** Easy week: the last work option, with reps capped by what was last done. */
export function easyReps(at: Situation, rules: SortedRules): Reps | null {
  const { place } = at;
  const toFailure = predictedAt(at, place.version, place.load, place.tempo);
  const depth = at.ground.habits.easyDepth ? 2 : 0;
  const least = Math.max(1, bottomOf(at) - depth);
  let cap = topOf(at);
  let reps = cap;
  let because: Rule = rangeRow(at);
  for (const each of rules.easyLimits) {
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
  if (at.ground.habits.easyLeast && (reserve >= at.occurrence.floor || !at.ground.habits.floor)) {
    const relaxed = broken(at, rules.easyLimits, place, toFailure, few);
    if (few < least) relaxed.unshift(easyDepth.row.id);
    return { place, reps: few, reserve, because: easyLeast.row, relaxed, fell: null };
  }
  return fallBack(at, rules, rules.easyLimits);
}

/** None in the range leaves the floor: the best of what does. `null` where nothing does. */
function fallBack(at: Situation, rules: SortedRules, limits: readonly Limit[]): Reps | null {
  for (const turn of [1, 2]) {
    let best: Fallback | null = null;
    let chosen: Fall | null = null;
    for (const fall of rules.falls) {
      if (fall.turn !== turn) continue;
      for (const offer of fall.offers(at)) {
        if (best !== null && !comesFirst(at, rules, offer, best)) continue;
        best = offer;
        chosen = fall;
      }
    }
    if (best !== null && chosen !== null) {
      const { place, reps, reserve } = best;
      const relaxed = [chosen.row.id, ...broken(at, limits, place, reserve + 10 * reps, reps)];
      return { place, reps, reserve, because: chosen.row, relaxed, fell: chosen.named };
    }
  }
  return null;
}

function comesFirst(at: Situation, rules: SortedRules, a: Fallback, b: Fallback): boolean {
  for (const preference of rules.preferences) {
    const order = preference.compare(at, a, b);
    if (order !== 0) return order < 0;
  }
  return false;
}

/** Limits that so many reps break, by id. */
function broken(at: Situation, limits: readonly Limit[], place: Place, toFailure: Tenths, reps: number): string[] {
  return limits.filter((limit) => limit.most(at, place, toFailure) < reps).map((limit) => limit.row.id);
}

function rangeRow(at: Situation): Rule {
  const cap = capOf(at);
  return cap !== null && cap < at.ground.input.top ? heldReps.row : range.row;
}
