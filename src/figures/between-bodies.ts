/** Bodies on the way from one position to the next: angles part of the way, with what bears the body kept where it bears. */
import { BODY_SIDES, type BodySide, type Contact } from '../model/pose.js';
import { bearingsOf } from './bearing.js';
import { FIRM, floorGoals, place, rangeGoals } from './body-goals.js';
import { grip, shoulder } from './landmarks.js';
import type { PosedBody } from './pose-body.js';
import { ANGLES, type Body, type Posture, placeOf } from './skeleton.js';
import { type Goal, solvePosture } from './solve-posture.js';
import {
  aboutLine,
  add,
  between,
  both,
  dot,
  lengthOf,
  minus,
  type Turn,
  times,
  turned,
  UP,
  unit,
  type Vector,
} from './vector.js';

const KEPT = 6;
/** Arms sweep by the shortest way, whatever their angles do. */
const LOOSE = 0.12;
const AXES: readonly Vector[] = [[1, 0, 0], UP, [0, 0, 1]];

/** Part of the way from one turn to another, by the shortest. */
function partTurn(from: Turn, to: Turn, share: number): Turn {
  const back: Turn = [
    [from[0][0], from[1][0], from[2][0]],
    [from[0][1], from[1][1], from[2][1]],
    [from[0][2], from[1][2], from[2][2]],
  ];
  const change = both(to, back);
  const spin: Vector = [change[1][2] - change[2][1], change[2][0] - change[0][2], change[0][1] - change[1][0]];
  const sine = lengthOf(spin) / 2;
  const cosine = (change[0][0] + change[1][1] + change[2][2] - 1) / 2;
  if (sine < 1e-9) return cosine > 0 ? to : from;
  return both(aboutLine(times(spin, (Math.atan2(sine, cosine) * share) / (2 * sine))), from);
}

const along = (body: Body, side: BodySide): Vector => minus(placeOf(body, grip(side)), placeOf(body, shoulder(side)));

/** Part of the way from one point to another, both seen from one place: round it by the shortest, nearer or further off. */
function partWay(a: Vector, b: Vector, share: number): Vector {
  const length = lengthOf(a) * (1 - share) + lengthOf(b) * share;
  const angle = Math.acos(Math.min(1, Math.max(-1, dot(unit(a), unit(b)))));
  if (angle < 1e-3 || Math.PI - angle < 1e-2) return between(a, b, share);
  const [u, v] = [Math.sin((1 - share) * angle), Math.sin(share * angle)];
  return times(unit(add(times(unit(a), u), times(unit(b), v))), length);
}

const same = (a: Contact, b: Contact): boolean => a.part === b.part && a.side === b.side && a.on === b.on;

/** `share` of the way, 0 to 1. */
export function bodyBetween(from: PosedBody, to: PosedBody, share: number): Body {
  const [a, b] = [from.body.posture, to.body.posture];
  const guess: Posture = {
    at: between(a.at, b.at, share),
    turn: partTurn(a.turn, b.turn, share),
    angles: a.angles.map((angle, index) => angle * (1 - share) + (b.angles[index] ?? angle) * share),
  };
  const stays = to.pose.contacts.filter((contact) => from.pose.contacts.some((one) => same(one, contact)));
  const goals: readonly Goal[] = [
    ...stays.flatMap((contact) =>
      bearingsOf(contact).flatMap(({ at }) => {
        const spot = between(placeOf(from.body, at), placeOf(to.body, at), share);
        return AXES.map((axis) => place(at, axis, dot(spot, axis), FIRM));
      }),
    ),
    ...ANGLES.map((name, index): Goal => {
      const weight = name.includes('shoulder') ? LOOSE : KEPT;
      return { kind: 'angle', index, target: guess.angles[index] ?? 0, bound: 'exactly', weight };
    }),
    ...BODY_SIDES.flatMap((side) => {
      const arm = partWay(along(from.body, side), along(to.body, side), share);
      return AXES.map((axis) => place(grip(side), axis, dot(arm, axis), 4, { from: shoulder(side) }));
    }),
    ...rangeGoals(),
    ...floorGoals(),
    ...AXES.map((axis) => place({ segment: 'pelvis', at: [0, 0, 0] }, axis, dot(guess.at, axis), 0.1)),
    ...AXES.map((axis) =>
      place({ segment: 'pelvis', at: [0, 20, 0] }, axis, dot(turned(guess.turn, [0, 20, 0]), axis), 0.4, {
        from: { segment: 'pelvis', at: [0, 0, 0] },
      }),
    ),
  ];
  return solvePosture(guess, goals);
}

/** The bodies of one repetition on its way out: of each leg so many in equal steps, the last of them the next position. */
export function bodiesOnTheWay(
  bodies: readonly PosedBody[],
  steps: (from: PosedBody, to: PosedBody) => number,
): readonly (readonly PosedBody[])[] {
  return bodies.slice(1).map((to, index) => {
    const from = bodies[index];
    if (!from) return [to];
    const count = steps(from, to);
    const between = Array.from(
      { length: count - 1 },
      (_, step): PosedBody => ({
        pose: to.pose,
        body: bodyBetween(from, to, (step + 1) / count),
      }),
    );
    return [...between, to];
  });
}
