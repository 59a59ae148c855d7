/** One repetition as it moves: each part of the first position turned, stretched and carried to each place on the way. */
import type { Tempo } from '../model/exercise.js';
import type { Box, Mark, Motion, PartMove, PartStep, Spot } from '../model/picture.js';
import type { Pose } from '../model/pose.js';
import { type Camera, cameraFor, seen } from './camera.js';
import { barMiddle, partOfPiece } from './draw-kit.js';
import { heldPieces } from './hold-kit.js';
import { massCentre } from './landmarks.js';
import { farEnd } from './limb-lines.js';
import { boxOf } from './outlines.js';
import type { PosedBody } from './pose-body.js';
import { type Body, frameOf, placeOf, SEGMENTS } from './skeleton.js';
import { add, times, type Vector } from './vector.js';

/** A joint that turns further than this between two moments gets another moment between them. Radians. */
const STEP = 0.6;
/** All legs of a way together: more would weigh more than they show. */
const MOST_ON_THE_WAY = 10;
const MOST_STEPS = 4;
/** Seconds: the least one way may take on the screen, whatever the tempo, and the least rest between. By eye. */
const LEAST_WAY = 0.7;
const LEAST_REST = 0.5;
const LEAST_HELD = 0.2;
/** A lift as fast as can be. */
const FAST = 0.7;

/** A part's near end on the drawing and the line from there to its far end. */
interface Rod {
  readonly at: Spot;
  readonly way: Spot;
}

const rod = (camera: Camera, from: Vector, to: Vector): Rod => {
  const [at, end] = [seen(camera, from), seen(camera, to)];
  return { at, way: [end[0] - at[0], end[1] - at[1]] };
};

function rodsOf(pose: Pose, body: Body, camera: Camera): ReadonlyMap<string, Rod> {
  const rods = new Map<string, Rod>();
  for (const segment of SEGMENTS) {
    rods.set(segment, rod(camera, frameOf(body, segment).at, placeOf(body, { segment, at: farEnd(segment) })));
  }
  heldPieces(pose, body).forEach((piece, index) => {
    rods.set(partOfPiece(piece, index), rod(camera, piece.grip, add(piece.grip, times(piece.way, 12))));
  });
  const bar = pose.kit.find((item) => item.kind === 'bar');
  if (bar?.kind === 'bar' && bar.held !== 'floor')
    rods.set('bar', { at: seen(camera, barMiddle(body, bar.held)), way: [0, 1] });
  return rods;
}

/** Centimetres on the drawing: what is seen shorter at first cannot be stretched into what it becomes. */
const FORESHORTENED = 6;
/** What is seen shorter on the way says nothing of a direction. */
const POINT = 0.1;

const lies = ({ way }: Rod): number => Math.atan2(way[1], way[0]);

/** The least turn from one direction to another, so that nothing goes the long way round. */
function turnBetween(from: number, to: number): number {
  const turn = (to - from) % (2 * Math.PI);
  return turn > Math.PI ? turn - 2 * Math.PI : turn < -Math.PI ? turn + 2 * Math.PI : turn;
}

function stepsOf([first, ...others]: readonly [Rod, ...Rod[]]): readonly PartStep[] {
  const length = Math.hypot(...first.way);
  let turn = 0;
  let was = lies(first);
  return others.map((rod) => {
    const next = Math.hypot(...rod.way);
    if (length < FORESHORTENED) return { turn, stretch: 1, at: rod.at };
    if (next >= POINT) {
      turn += turnBetween(was, lies(rod));
      was = lies(rod);
    }
    return { turn, stretch: next / length, at: rod.at };
  });
}

/** Where a step has carried a spot of the first position. */
function carried({ joint, lies: angle }: PartMove, { turn, stretch, at }: PartStep, [x, y]: Spot): Spot {
  const [dx, dy] = [x - joint[0], y - joint[1]];
  const [along, aside] = [Math.cos(angle) * dx + Math.sin(angle) * dy, Math.cos(angle) * dy - Math.sin(angle) * dx];
  const [c, s] = [Math.cos(angle + turn), Math.sin(angle + turn)];
  return [at[0] + c * along * stretch - s * aside, at[1] + s * along * stretch + c * aside];
}

/** How many steps one leg of the way takes; two at least, so that an arrow can bend. */
export function stepsFor(from: PosedBody, to: PosedBody, legs: number): number {
  const most = from.body.posture.angles.reduce(
    (angle, one, index) => Math.max(angle, Math.abs(one - (to.body.posture.angles[index] ?? one))),
    0,
  );
  const share = Math.floor(MOST_ON_THE_WAY / legs);
  return Math.max(2, Math.min(MOST_STEPS, share, Math.ceil(most / STEP)));
}

export interface Timing {
  readonly out: number;
  readonly held: number;
  readonly back: number;
  readonly rest: number;
}

export function timingOf(bodies: readonly PosedBody[], tempo: Tempo): Timing {
  const [first, second] = bodies;
  const lowersFirst = first && second && massCentre(second.body)[1] < massCentre(first.body)[1] - 1;
  const lift = tempo.lift === 'fast' ? FAST : tempo.lift;
  const least = LEAST_WAY * Math.max(1, bodies.length - 1);
  const [out, held, back, rest] = lowersFirst
    ? [tempo.lower, tempo.bottom, lift, tempo.top]
    : [lift, tempo.top, tempo.lower, tempo.bottom];
  return {
    out: Math.max(least, out),
    held: Math.max(LEAST_HELD, held),
    back: Math.max(least, back),
    rest: Math.max(LEAST_REST, rest),
  };
}

/** When a movement that starts and ends gently has come so far: the inverse of 3t² - 2t³. */
const when = (share: number): number => 0.5 - Math.sin(Math.asin(1 - 2 * share) / 3);

/** Out through every position, held, and back the same way. */
function passedAt(legs: readonly (readonly PosedBody[])[], { out, held, back, rest }: Timing): Motion['passed'] {
  const seconds = out + held + back + rest;
  const shares = legs.flatMap((leg, index) => leg.map((_, step) => (index + (step + 1) / leg.length) / legs.length));
  return [0, ...shares].map((share) => [
    (when(share) * out) / seconds,
    (out + held + when(1 - share) * back) / seconds,
  ]);
}

/** Centimetres: parts that nowhere come apart by more move as one. */
const TOGETHER = 0.6;
const STILL = 0.4;

/** Corners of what a part is drawn as. */
function cornersOf(marks: readonly Mark[], part: string): readonly Spot[] {
  const { left, right, low, high } = boxOf(marks.filter((mark) => mark.part === part));
  return [
    [left, low],
    [right, low],
    [right, high],
    [left, high],
  ];
}

/** Whether one move carries so many spots to where another does, or leaves them where they are. */
const carriesLike = (one: PartMove, spots: readonly Spot[], most: number, other?: PartMove): boolean =>
  one.steps.every((step, index) => {
    const theirs = other?.steps[index];
    return spots.every((spot) => {
      const [x, y] = carried(one, step, spot);
      const [ox, oy] = other && theirs ? carried(other, theirs, spot) : spot;
      return Math.hypot(x - ox, y - oy) < most;
    });
  });

/** `marks` are the first position's own. */
export function motionOf(
  bodies: readonly PosedBody[],
  legs: readonly (readonly PosedBody[])[],
  marks: readonly Mark[],
  box: Box,
  tempo: Tempo,
): Motion {
  const [first] = bodies;
  const timing = timingOf(bodies, tempo);
  const camera = cameraFor(first?.pose.view ?? 'side');
  const rods = (posed: PosedBody): ReadonlyMap<string, Rod> =>
    rodsOf(first ? { ...first.pose, hands: posed.pose.hands } : posed.pose, posed.body, camera);
  const start = first ? rods(first) : new Map<string, Rod>();
  const way = legs.flat().map(rods);
  const moves: PartMove[] = [];
  for (const part of new Set(marks.map((mark) => mark.part))) {
    const from = start.get(part);
    if (!from) continue;
    const steps = stepsOf([from, ...way.map((one) => one.get(part) ?? from)]);
    const move = { parts: [part], joint: from.at, lies: lies(from), steps };
    const corners = cornersOf(marks, part);
    if (carriesLike(move, corners, STILL)) continue;
    const known = moves.findIndex((other) => carriesLike(move, corners, TOGETHER, other));
    const other = moves[known];
    if (other) moves[known] = { ...other, parts: [...other.parts, part] };
    else moves.push(move);
  }
  const seconds = timing.out + timing.held + timing.back + timing.rest;
  return { picture: { marks, box }, passed: passedAt(legs, timing), moves, seconds };
}
