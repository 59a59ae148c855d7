/** The one arrow of a drawing: the way of whatever moves furthest, beside it rather than over it. */

import type { Mark, Outline, Spot } from '../model/picture.js';
import type { Pose } from '../model/pose.js';
import { type Camera, seen } from './camera.js';
import { heldPieces } from './hold-kit.js';
import { ankle, grip, headCentre, hipsMiddle, massCentre } from './landmarks.js';
import { openLine } from './outlines.js';
import { type Body, type Landmark, placeOf } from './skeleton.js';
import { add, times, type Vector } from './vector.js';

/** A path this short needs no arrow. Centimetres. */
const LEAST = 9;
const BESIDE = 7;
const HEAD = 8;

/** What may lead the eye, in order: kit where there is any, else the body's ends and its middle. */
const LEADERS: readonly Landmark[] = [
  hipsMiddle,
  headCentre,
  grip('right'),
  grip('left'),
  ankle('right'),
  ankle('left'),
];

function tracks(pose: Pose, bodies: readonly Body[], camera: Camera): readonly (readonly Spot[])[] {
  const kit = heldPieces(pose, bodies[0] ?? bodies[bodies.length - 1] ?? never()).map((_, index) =>
    bodies.flatMap((body): readonly Spot[] => {
      const piece = heldPieces(pose, body)[index];
      return piece && piece.hands.length > 0 ? [seen(camera, middleOf(piece.grip, piece.way))] : [];
    }),
  );
  const body = LEADERS.map((leader) => bodies.map((one) => seen(camera, placeOf(one, leader))));
  return [...kit.filter((track) => track.length === bodies.length), ...body];
}

const never = (): never => {
  throw new RangeError('a path needs bodies');
};

const middleOf = (grip: Vector, way: Vector): Vector => add(grip, times(way, 10));

const farOf = (track: readonly Spot[]): number => {
  const [first, last] = [track[0], track[track.length - 1]];
  return first && last ? Math.hypot(last[0] - first[0], last[1] - first[1]) : 0;
};

/** `bodies` run from the position before to this one. */
export function arrowMarks(pose: Pose, bodies: readonly Body[], camera: Camera): readonly Mark[] {
  if (bodies.length < 2) return [];
  const all = tracks(pose, bodies, camera);
  const held = heldPieces(pose, bodies[0] ?? never()).some(({ hands }) => hands.length > 0);
  const furthest = all.reduce((best, track, index) =>
    farOf(track) > farOf(best) * (held && index > 0 ? 1.6 : 1.7) ? track : best,
  );
  if (farOf(furthest) < LEAST) return [];
  const middle = bodies[Math.floor(bodies.length / 2)];
  const centre = middle ? seen(camera, massCentre(middle)) : ([0, 0] as const);
  // From the ceiling nothing lies under the floor's line.
  return arrowAlong(aside(furthest, centre, camera.up[1] === 0 ? Number.NEGATIVE_INFINITY : 3));
}

/** Moved off to the side that is away from the body. */
function aside(track: readonly Spot[], centre: Spot, least: number): readonly Spot[] {
  const [first, last] = [track[0], track[track.length - 1]];
  const half = track[Math.floor(track.length / 2)];
  if (!first || !last || !half) return track;
  const length = Math.hypot(last[0] - first[0], last[1] - first[1]);
  const side: Spot = [-(last[1] - first[1]) / length, (last[0] - first[0]) / length];
  const away = (half[0] - centre[0]) * side[0] + (half[1] - centre[1]) * side[1] >= 0 ? 1 : -1;
  const off = BESIDE + 9;
  return track.map(([x, y]): Spot => [x + side[0] * off * away, Math.max(least, y + side[1] * off * away)]);
}

/** One even bow from the first spot to the last, past the one in the middle of the way. */
function bowed(track: readonly Spot[]): Outline {
  const [from, to] = [track[0], track[track.length - 1]];
  const half = track[Math.floor((track.length - 1) / 2)];
  if (!from || !to || !half) return [];
  return [
    { kind: 'move', to: from },
    { kind: 'curve', by: bow(from, half, to), to },
  ];
}

const bow = (from: Spot, half: Spot, to: Spot): Spot => [
  2 * half[0] - (from[0] + to[0]) / 2,
  2 * half[1] - (from[1] + to[1]) / 2,
];

function arrowAlong(track: readonly Spot[]): readonly Mark[] {
  const last = track[track.length - 1];
  const half = track[Math.floor((track.length - 1) / 2)];
  const first = track[0];
  if (!last || !half || !first) return [];
  const before = bow(first, half, last);
  const length = Math.hypot(last[0] - before[0], last[1] - before[1]) || 1;
  const way: Spot = [(last[0] - before[0]) / length, (last[1] - before[1]) / length];
  const wing = (turn: 1 | -1): Spot => [
    last[0] - HEAD * (way[0] * 0.82 + turn * way[1] * 0.57),
    last[1] - HEAD * (way[1] * 0.82 - turn * way[0] * 0.57),
  ];
  return [
    { paint: 'line', weight: 'far', part: 'arrow', outline: bowed(track) },
    { paint: 'line', weight: 'far', part: 'arrow', outline: openLine([wing(1), last, wing(-1)]) },
  ];
}
