/**
 * Finds the posture that comes nearest to all goals at once: damped least squares (Levenberg 1944, Marquardt 1963) over
 * the place and turn of the hips and every joint's angle. Goals with much weight are met to fractions of a millimetre
 * where a body can; the rest share what is left free.
 */
import { MASSES } from './landmarks.js';
import { addSlope, type Body, bodyOf, FREEDOMS, type Landmark, type Posture, placeOf } from './skeleton.js';
import { aboutLine, add, both, dot, ORIGIN, times, type Vector } from './vector.js';

/** `least` and `most` only pull where the value is on the wrong side. */
export type Bound = 'exactly' | 'least' | 'most';

export type Goal =
  /** The place of `to` (from `from`, where given) along a direction, in centimetres. */
  | {
      readonly kind: 'place';
      readonly to: Landmark;
      readonly from?: Landmark;
      readonly direction: Vector;
      readonly target: number;
      readonly bound: Bound;
      readonly weight: number;
    }
  /** An angle, in radians; `index` is its place in `ANGLES`. */
  | {
      readonly kind: 'angle';
      readonly index: number;
      readonly target: number;
      readonly bound: Bound;
      readonly weight: number;
    }
  /** The centre of mass along a direction, within the inner `share` of what bears the body. */
  | {
      readonly kind: 'mass';
      readonly over: readonly Landmark[];
      readonly direction: Vector;
      readonly share: number;
      readonly weight: number;
      /** Held in the hands, as shares of the body's mass. */
      readonly carried: readonly { readonly at: Landmark; readonly share: number }[];
    };

const MOST_STEPS = 60;
/** A step that gains less than this share is the last. */
const LEAST_GAIN = 2e-5;
/** A step turns no joint by more than this, in radians. */
const MOST_TURN = 0.5;

interface Row {
  readonly slope: Float64Array;
  readonly miss: number;
}

const pulls = (bound: Bound, miss: number): boolean => bound === 'exactly' || (bound === 'least' ? miss < 0 : miss > 0);

function rowOf(body: Body, goal: Exclude<Goal, { kind: 'angle' }>): Row | undefined {
  switch (goal.kind) {
    case 'place': {
      const place = placeOf(body, goal.to);
      const from = goal.from ? placeOf(body, goal.from) : ORIGIN;
      const miss = dot(place, goal.direction) - dot(from, goal.direction) - goal.target;
      if (!pulls(goal.bound, miss)) return undefined;
      const slope = new Float64Array(FREEDOMS);
      addSlope(body, goal.to, place, goal.direction, goal.weight, slope);
      if (goal.from) addSlope(body, goal.from, from, goal.direction, -goal.weight, slope);
      return { slope, miss: miss * goal.weight };
    }
    case 'mass':
      return massRow(body, goal);
  }
}

function massRow(body: Body, goal: Extract<Goal, { kind: 'mass' }>): Row | undefined {
  const parts = [...MASSES, ...goal.carried];
  const whole = parts.reduce((sum, { share }) => sum + share, 0);
  let miss = 0;
  for (const { at, share } of parts) miss += (dot(placeOf(body, at), goal.direction) * share) / whole;
  const spots = goal.over.map((at) => dot(placeOf(body, at), goal.direction));
  const [least, most] = [Math.min(...spots), Math.max(...spots)];
  miss -= (least + most) / 2;
  const slack = ((most - least) / 2) * goal.share;
  const beyond = Math.sign(miss) * Math.max(0, Math.abs(miss) - slack);
  if (beyond === 0) return undefined;
  const slope = new Float64Array(FREEDOMS);
  for (const { at, share } of parts) {
    addSlope(body, at, placeOf(body, at), goal.direction, (goal.weight * share) / whole, slope);
  }
  for (const at of goal.over) {
    addSlope(body, at, placeOf(body, at), goal.direction, -goal.weight / goal.over.length, slope);
  }
  return { slope, miss: beyond * goal.weight };
}

/** Half the sum of squares of what is missed, and what a step needs to know of it. */
function measure(body: Body, goals: readonly Goal[]) {
  const normal = new Float64Array(FREEDOMS * FREEDOMS);
  const gradient = new Float64Array(FREEDOMS);
  let cost = 0;
  for (const goal of goals) {
    if (goal.kind === 'angle') {
      const miss = missOf(body, goal);
      if (miss === 0) continue;
      const at = 6 + goal.index;
      cost += miss * miss;
      gradient[at] = (gradient[at] ?? 0) + goal.weight * miss;
      normal[at * FREEDOMS + at] = (normal[at * FREEDOMS + at] ?? 0) + goal.weight * goal.weight;
      continue;
    }
    const row = rowOf(body, goal);
    if (!row) continue;
    const { slope, miss } = row;
    cost += miss * miss;
    for (let i = 0; i < FREEDOMS; i += 1) {
      const si = slope[i] ?? 0;
      if (si === 0) continue;
      gradient[i] = (gradient[i] ?? 0) + si * miss;
      for (let j = 0; j <= i; j += 1) {
        normal[i * FREEDOMS + j] = (normal[i * FREEDOMS + j] ?? 0) + si * (slope[j] ?? 0);
      }
    }
  }
  return { normal, gradient, cost };
}

function costOf(body: Body, goals: readonly Goal[]): number {
  let cost = 0;
  for (const goal of goals) cost += missOf(body, goal) ** 2;
  return cost;
}

/** What a goal is missed by, times its weight; nothing where a bound is kept. */
function missOf(body: Body, goal: Goal): number {
  if (goal.kind === 'mass') return massRow(body, goal)?.miss ?? 0;
  if (goal.kind === 'angle') {
    const miss = (body.posture.angles[goal.index] ?? 0) - goal.target;
    return pulls(goal.bound, miss) ? miss * goal.weight : 0;
  }
  const from = goal.from ? dot(placeOf(body, goal.from), goal.direction) : 0;
  const miss = dot(placeOf(body, goal.to), goal.direction) - from - goal.target;
  return pulls(goal.bound, miss) ? miss * goal.weight : 0;
}

/** Solves the damped normal equations by Cholesky's factors; nothing where they have none. */
function stepOf(normal: Float64Array, gradient: Float64Array, damping: number): Float64Array | undefined {
  const n = FREEDOMS;
  const lower = new Float64Array(n * n);
  for (let i = 0; i < n; i += 1) {
    for (let j = 0; j <= i; j += 1) {
      let sum = normal[i * n + j] ?? 0;
      if (i === j) sum += damping * (sum + 1e-3);
      for (let k = 0; k < j; k += 1) sum -= (lower[i * n + k] ?? 0) * (lower[j * n + k] ?? 0);
      if (i === j) {
        if (sum <= 0) return undefined;
        lower[i * n + i] = Math.sqrt(sum);
      } else {
        lower[i * n + j] = sum / (lower[j * n + j] ?? 1);
      }
    }
  }
  const step = new Float64Array(n);
  for (let i = 0; i < n; i += 1) {
    let sum = -(gradient[i] ?? 0);
    for (let k = 0; k < i; k += 1) sum -= (lower[i * n + k] ?? 0) * (step[k] ?? 0);
    step[i] = sum / (lower[i * n + i] ?? 1);
  }
  for (let i = n - 1; i >= 0; i -= 1) {
    let sum = step[i] ?? 0;
    for (let k = i + 1; k < n; k += 1) sum -= (lower[k * n + i] ?? 0) * (step[k] ?? 0);
    step[i] = sum / (lower[i * n + i] ?? 1);
  }
  return step;
}

function moved(posture: Posture, step: Float64Array): Posture {
  let most = 0;
  for (let i = 3; i < FREEDOMS; i += 1) most = Math.max(most, Math.abs(step[i] ?? 0));
  const scale = most > MOST_TURN ? MOST_TURN / most : 1;
  const by = (index: number): number => (step[index] ?? 0) * scale;
  return {
    at: add(posture.at, [by(0), by(1), by(2)]),
    turn: both(aboutLine(times([by(3), by(4), by(5)], 1)), posture.turn),
    angles: posture.angles.map((angle, index) => angle + by(6 + index)),
  };
}

/** From a first guess to the nearest posture. The same goals from the same guess give the same posture, to the last bit. */
export function solvePosture(guess: Posture, goals: readonly Goal[]): Body {
  let body = bodyOf(guess);
  let damping = 1e-2;

  let { normal, gradient, cost } = measure(body, goals);
  for (let count = 0; count < MOST_STEPS; count += 1) {
    const step = stepOf(normal, gradient, damping);
    const next = step ? bodyOf(moved(body.posture, step)) : undefined;
    const nextCost = next ? costOf(next, goals) : Number.POSITIVE_INFINITY;
    if (next && nextCost < cost) {
      const gain = (cost - nextCost) / cost;
      body = next;
      damping = Math.max(damping / 6, 1e-9);
      ({ normal, gradient, cost } = measure(body, goals));
      if (gain < LEAST_GAIN) break;
    } else {
      damping *= 8;
      if (damping > 1e8) break;
    }
  }
  return body;
}
