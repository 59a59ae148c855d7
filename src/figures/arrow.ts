/** The one arrow of a drawing: the way of whatever moves furthest, beside it rather than over it. */

import type { Mark, Outline, Spot } from '../model/picture.js';
import type { Pose } from '../model/pose.js';
import { type Camera, seen } from './camera.js';
import { barMiddle, isEndOn, PLATE_RADIUS } from './draw-kit.js';
import { heldPieces } from './hold-kit.js';
import { ankle, grip, headCentre, hipsMiddle } from './landmarks.js';
import { farFrom, type LimbLine, limbLines } from './limb-lines.js';
import { openLine } from './outlines.js';
import { type Body, type Landmark, placeOf } from './skeleton.js';
import { add, times, type Vector } from './vector.js';

/** A path this short needs no arrow. Centimetres. */
const LEAST = 9;
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

const wayOf = (track: readonly Spot[]): Spot => {
  const [first, last] = [track[0], track[track.length - 1]];
  return first && last ? [last[0] - first[0], last[1] - first[1]] : [0, 0];
};

const farOf = (track: readonly Spot[]): number => Math.hypot(...wayOf(track));

/** How far one track goes the way of another; nothing where it goes more aside than a third of that. */
function alongOf(track: readonly Spot[], other: readonly Spot[]): number {
  const [[x, y], [ox, oy]] = [wayOf(track), wayOf(other)];
  const long = Math.hypot(ox, oy);
  const along = (x * ox + y * oy) / long;
  return Math.abs(x * oy - y * ox) / long > along / 3 ? 0 : along;
}

/** `bodies` run from the position before to this one. */
export function arrowMarks(pose: Pose, bodies: readonly Body[], camera: Camera): readonly Mark[] {
  if (bodies.length < 2) return [];
  const all = tracks(pose, bodies, camera);
  const held = heldPieces(pose, bodies[0] ?? never()).some(({ hands }) => hands.length > 0);
  const furthest = all.reduce((best, track, index) =>
    farOf(track) > farOf(best) * (held && index > 0 ? 1.6 : 1.7) ? track : best,
  );
  if (farOf(furthest) < LEAST) return [];
  const now = bodies[bodies.length - 1];
  const lines = now ? [...limbLines(now, camera), ...plateOf(pose, now, camera)] : [];
  // From the ceiling nothing lies under the floor's line.
  const least = camera.up[1] === 0 ? Number.NEGATIVE_INFINITY : 3;
  const stands = aside(furthest, lines, least);
  if (stands.cost <= CROWDED) return arrowAlong(stands.track);
  // Where it would run across the body, another part that goes the same way nearly as far tells it as well.
  const others = all
    .filter((track) => alongOf(track, furthest) >= NEARLY * farOf(furthest))
    .map((track) => aside(track, lines, least));
  const clearest = others.reduce((best, one) => (one.cost < best.cost - CLEARER ? one : best), stands);
  return arrowAlong(clearest.track);
}

/** What an arrow may cost before another is looked for; how far the other goes of its way; how much clearer it is to be. */
const CROWDED = 45;
const NEARLY = 0.65;
const CLEARER = 12;

/** The plate that a bar is from its end: a spot as wide as it. */
const plateOf = (pose: Pose, body: Body, camera: Camera): readonly LimbLine[] =>
  pose.kit.flatMap((item): readonly LimbLine[] => {
    if (item.kind !== 'bar' || !isEndOn(camera)) return [];
    const at = seen(camera, barMiddle(body, item.held));
    return [{ from: at, to: at, round: PLATE_RADIUS }];
  });

/** To which side, and how far off, an arrow may stand from the way it shows. Centimetres; to the left of the way positive. */
const OFFSETS = [13, -13, 18, -18, 24, -24, 31, -31];
/** White left between an arrow and a limb. */
const CLEAR = 4.5;
/** What a covered part of an arrow weighs against a centimetre further off. */
const COVERED = 6;
const PARTS = 8;

interface Aside {
  readonly track: readonly Spot[];
  /** How much of it is covered, and how far it is from what it shows. */
  readonly cost: number;
}

/** Moved off to where the body covers least of it. */
function aside(track: readonly Spot[], lines: readonly LimbLine[], least: number): Aside {
  const [first, last] = [track[0], track[track.length - 1]];
  if (!first || !last) return { track, cost: Number.POSITIVE_INFINITY };
  const length = Math.hypot(last[0] - first[0], last[1] - first[1]);
  const side: Spot = [-(last[1] - first[1]) / length, (last[0] - first[0]) / length];
  const moved = (off: number): readonly Spot[] =>
    track.map(([x, y]): Spot => [x + side[0] * off, Math.max(least, y + side[1] * off)]);
  const costs = OFFSETS.map((off) => {
    const spots = alongBow(moved(off));
    const covered = spots.filter((spot) => lines.some((line) => farFrom(spot, line) < line.round + CLEAR)).length;
    // Its point says most.
    const point = spots[spots.length - 1];
    const hidden = point !== undefined && lines.some((line) => farFrom(point, line) < line.round + CLEAR + 2) ? 3 : 0;
    return { off, cost: (covered + hidden) * COVERED + Math.abs(off) };
  });
  const { off, cost } = costs.reduce((best, one) => (one.cost < best.cost - 1e-6 ? one : best));
  return { track: moved(off), cost };
}

function alongBow(track: readonly Spot[]): readonly Spot[] {
  const [from, to] = [track[0], track[track.length - 1]];
  const half = track[Math.floor((track.length - 1) / 2)];
  if (!from || !to || !half) return [];
  const by = bow(from, half, to);
  return Array.from({ length: PARTS + 1 }, (_, part): Spot => {
    const t = part / PARTS;
    const [a, b, c] = [(1 - t) ** 2, 2 * t * (1 - t), t * t];
    return [a * from[0] + b * by[0] + c * to[0], a * from[1] + b * by[1] + c * to[1]];
  });
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
