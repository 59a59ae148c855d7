/** What bears a body, as seen from above, and where its weight lies over that: whether it would stand. */
import { BODY_SIDES, type Contact, type Pose } from '../model/pose.js';
import type { FigureProblems } from '../model/problems-figures.js';
import { bearingsOf, ELBOW_ROUND, KNEE_ROUND, SEAT_ROUND } from './bearing.js';
import { isLying, ROUND } from './body-goals.js';
import { ball, grip, heel, MASSES, toeTip } from './landmarks.js';
import { carriedIn } from './pose-body.js';
import { type Body, type Landmark, placeOf } from './skeleton.js';
import { facingOf } from './standing.js';
import { add, dot, minus, times, type Vector } from './vector.js';

/** Seen from above: x ahead, z to the right. */
export type FloorSpot = readonly [x: number, z: number];

/** Breadth of a foot is published (0.055 of stature); the rest is flesh as drawn. */
const HALF_FOOT = 0.0275 * 175;
const HALF_HAND = 4;

function roundOf({ part }: Contact): number {
  switch (part) {
    case 'foot':
    case 'toes':
    case 'heel':
    case 'instep':
      return HALF_FOOT;
    case 'knee':
      return KNEE_ROUND;
    case 'hand':
      return HALF_HAND;
    case 'forearm':
    case 'elbow':
      return ELBOW_ROUND;
    default:
      return SEAT_ROUND;
  }
}

const pointsOf = (contact: Contact): readonly Landmark[] =>
  contact.part === 'foot'
    ? [heel(contact.side), ball(contact.side), toeTip(contact.side)]
    : contact.part === 'hand'
      ? [...bearingsOf(contact).map(({ at }) => at), grip(contact.side)]
      : bearingsOf(contact).map(({ at }) => at);

const AROUND = 8;
/** Centimetres above the floor. */
const TOUCHING = 3;

/** The corners of what bears the body, in order; empty where nothing does. */
export function supportOf(pose: Pose, body: Body): readonly FloorSpot[] {
  const said = pose.contacts
    .filter(({ on }) => on !== 'wall')
    .flatMap((contact) => pointsOf(contact).flatMap((point) => ringOf(placeOf(body, point), roundOf(contact))));
  // What touches the floor without being said to would catch the body all the same.
  const touching = BODY_SIDES.flatMap((side) =>
    ROUND.flatMap(({ at, off }) => {
      const place = placeOf(body, at(side));
      return place[1] - off < TOUCHING ? ringOf(place, off) : [];
    }),
  );
  return said.length === 0 ? [] : cornersOf([...said, ...touching]);
}

function ringOf([x, , z]: Vector, round: number): readonly FloorSpot[] {
  return Array.from({ length: AROUND }, (_, index) => {
    const angle = (2 * Math.PI * index) / AROUND;
    return [x + round * Math.cos(angle), z + round * Math.sin(angle)];
  });
}

const turnAt = (a: FloorSpot, b: FloorSpot, c: FloorSpot): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

/** The convex hull, turning left: Andrew's monotone chain (1979). */
function cornersOf(spots: readonly FloorSpot[]): readonly FloorSpot[] {
  const sorted = [...spots].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const half = (line: readonly FloorSpot[]): readonly FloorSpot[] => {
    const kept: FloorSpot[] = [];
    for (const spot of line) {
      let [b, a] = [kept[kept.length - 1], kept[kept.length - 2]];
      while (a && b && turnAt(a, b, spot) <= 0) {
        kept.pop();
        [b, a] = [kept[kept.length - 1], kept[kept.length - 2]];
      }
      kept.push(spot);
    }
    return kept.slice(0, -1);
  };
  return [...half(sorted), ...half([...sorted].reverse())];
}

/** The centre of mass of the body with what it carries in its hands. */
export function weightOf(pose: Pose, body: Body): Vector {
  const parts = [...MASSES, ...carriedIn(pose)];
  const whole = parts.reduce((sum, { share }) => sum + share, 0);
  return parts.reduce<Vector>((sum, { at, share }) => add(sum, times(placeOf(body, at), share / whole)), [0, 0, 0]);
}

/** Where nobody asks whether the figure would stand: caught in movement, lying, or leaning against a wall. */
export const isHeld = (pose: Pose): boolean =>
  pose.moving || isLying(pose) || pose.contacts.length === 0 || pose.contacts.some(({ on }) => on === 'wall');

export interface Fall {
  /** Centimetres from the edge of what bears the body. */
  readonly beyond: number;
  readonly way: FigureProblems['pose-falls']['way'];
}

/** Nothing where the weight lies over what bears the body. */
export function fallOf(pose: Pose, body: Body): Fall | undefined {
  const corners = supportOf(pose, body);
  const [x, , z] = weightOf(pose, body);
  let nearest: FloorSpot | undefined;
  let least = Number.POSITIVE_INFINITY;
  let inside = corners.length > 0;
  corners.forEach((a, index) => {
    const b = corners[(index + 1) % corners.length];
    if (!b) return;
    if (turnAt(a, b, [x, z]) < 0) inside = false;
    const spot = nearestOn(a, b, [x, z]);
    const far = Math.hypot(x - spot[0], z - spot[1]);
    if (far < least) [least, nearest] = [far, spot];
  });
  if (inside || !nearest) return undefined;
  const [forward, , right] = facingOf(pose.trunk);
  const off = minus([x, 0, z], [nearest[0], 0, nearest[1]]);
  const [ahead, aside] = [dot(off, forward), dot(off, right)];
  const way =
    Math.abs(ahead) >= Math.abs(aside)
      ? ahead > 0
        ? 'forwards'
        : 'backwards'
      : aside > 0
        ? 'to the right'
        : 'to the left';
  return { beyond: least, way };
}

function nearestOn(a: FloorSpot, b: FloorSpot, [x, z]: FloorSpot): FloorSpot {
  const [dx, dz] = [b[0] - a[0], b[1] - a[1]];
  const length = dx * dx + dz * dz;
  const share = length === 0 ? 0 : Math.min(1, Math.max(0, ((x - a[0]) * dx + (z - a[1]) * dz) / length));
  return [a[0] + dx * share, a[1] + dz * share];
}
