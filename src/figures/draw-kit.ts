/** Kit → marks: what is held, what is stretched between hands and feet, and the mat beneath. */

import { type Box, type Mark, type Outline, type Paint, type Spot, type Weight, WIDTHS } from '../model/picture.js';
import { type BandEnd, BODY_SIDES, type BodySide, type Pose, type PoseKit } from '../model/pose.js';
import { type Camera, nearness, seen } from './camera.js';
import { armNearness, type Limb } from './draw-body.js';
import { BALL_RADIUS, type HeldPiece, heldPieces, TO_HANDLE } from './hold-kit.js';
import { ball, grip, kneeCentre, middleBack } from './landmarks.js';
import { circle, closedLine, openLine, smoothLine } from './outlines.js';
import { stoodIn } from './scene.js';
import { type Body, placeOf } from './skeleton.js';
import { add, between, times, type Vector } from './vector.js';

const mark = (paint: Paint, weight: Weight, outline: Outline, part: string): Mark => ({ paint, weight, outline, part });

/** Square to a direction on the drawing, a quarter turn to the left. */
const beside = ([x, y]: Spot): Spot => [-y, x];
const step = (from: Spot, along: Spot, far: number, side: Spot = [0, 0], off = 0): Spot => [
  from[0] + along[0] * far + side[0] * off,
  from[1] + along[1] * far + side[1] * off,
];

function flatUnit([x, y]: Spot): Spot {
  const length = Math.hypot(x, y);
  return length < 0.05 ? [0, -1] : [x / length, y / length];
}

/** Which moving thing a held piece goes with. */
export const partOfPiece = (piece: HeldPiece, index: number): string =>
  piece.hands.length === 1 ? `${piece.hands[0]} ${piece.kind}` : `${piece.kind} ${index}`;

function bellMarks(piece: HeldPiece, camera: Camera, part: string): readonly Mark[] {
  const middle = seen(camera, add(piece.grip, times(piece.way, TO_HANDLE)));
  const [gx, gy] = seen(camera, piece.grip);
  const up = flatUnit([gx - middle[0], gy - middle[1]]);
  const side = beside(up);
  const at = (far: number, off: number): Spot => step(middle, up, far, side, off);
  const handle = smoothLine([at(6, -6), at(12, -7.4), at(TO_HANDLE, -6), at(TO_HANDLE, 6), at(12, 7.4), at(6, 6)]);
  return [mark('line', 'near', handle, part), mark('solid', 'near', circle(middle, BALL_RADIUS), part)];
}

function dumbbellMarks(piece: HeldPiece, camera: Camera, part: string): readonly Mark[] {
  const middle = seen(camera, piece.grip);
  const [wx, wy] = seen(camera, piece.way);
  if (Math.hypot(wx, wy) < 0.4) return [mark('solid', 'near', circle(middle, 6.5), part)];
  const along = flatUnit([wx, wy]);
  const side = beside(along);
  const head = (from: number, to: number): Outline =>
    closedLine([
      step(middle, along, from, side, 6),
      step(middle, along, to, side, 6),
      step(middle, along, to, side, -6),
      step(middle, along, from, side, -6),
    ]);
  return [
    mark('line', 'near', openLine([step(middle, along, -8), step(middle, along, 8)]), part),
    mark('solid', 'near', head(6.5, 13), part),
    mark('solid', 'near', head(-6.5, -13), part),
  ];
}

/** The largest plates are 450 mm across: from memory of the rules of weightlifting, no source seen. */
export const PLATE_RADIUS = 22.5;
const BAR_HALF = 90;
const PLATES_AT = 78;

type HeldBar = Extract<PoseKit, { kind: 'bar' }>['held'];

/** Midway between its plates. */
export function barMiddle(body: Body, held: HeldBar): Vector {
  if (held === 'floor') return [6, PLATE_RADIUS, 0];
  if (held === 'back') return placeOf(body, { segment: 'thorax', at: [-11, 20, 0] });
  return between(placeOf(body, grip('left')), placeOf(body, grip('right')), 0.5);
}

/** Whether a bar is seen from its end. */
export const isEndOn = (camera: Camera): boolean => Math.abs(camera.across[2]) < 0.3;

/** The bar and its plates, each as near as it is: what is nearer hides what is behind it. */
function barLimbs(body: Body, camera: Camera, held: HeldBar): readonly Limb[] {
  const middle = barMiddle(body, held);
  const part = 'bar';
  if (isEndOn(camera)) return [{ nearness: IN_FRONT, marks: plateMarks(seen(camera, middle), part) }];
  const end = (far: number): Spot => seen(camera, add(middle, [0, 0, far]));
  const plate = (far: number): Limb => {
    const [x, y] = end(far);
    const outline = closedLine([
      [x - 2.5, y - PLATE_RADIUS],
      [x + 2.5, y - PLATE_RADIUS],
      [x + 2.5, y + PLATE_RADIUS],
      [x - 2.5, y + PLATE_RADIUS],
    ]);
    return { nearness: nearness(camera, [0, 0, far]), marks: [mark('solid', 'near', outline, part)] };
  };
  const bar = mark('line', 'near', openLine([end(-BAR_HALF), end(BAR_HALF)]), part);
  return [{ nearness: held === 'back' ? -2 : 3, marks: [bar] }, plate(-PLATES_AT), plate(PLATES_AT)];
}

/** Nearer than any part of the body. */
const IN_FRONT = 40;

/** From its end a bar is the nearer plate, which hides the other, the hands and the legs behind it. */
const plateMarks = (at: Spot, part: string): readonly Mark[] => [
  mark('edge', 'near', circle(at, PLATE_RADIUS - WIDTHS.near), part),
  mark('paper', 'near', circle(at, PLATE_RADIUS - WIDTHS.near), part),
  mark('line', 'far', circle(at, 11), part),
  mark('solid', 'near', circle(at, 2.4), part),
];

function bandSpots(pose: Pose, body: Body, end: BandEnd): readonly Vector[] {
  switch (end) {
    case 'feet':
      return BODY_SIDES.map((side) => placeOf(body, ball(side)));
    case 'left foot':
      return [placeOf(body, ball('left'))];
    case 'right foot':
      return [placeOf(body, ball('right'))];
    case 'hands':
      return BODY_SIDES.map((side) => placeOf(body, grip(side)));
    case 'left hand':
      return [placeOf(body, grip('left'))];
    case 'right hand':
      return [placeOf(body, grip('right'))];
    case 'knees':
      return BODY_SIDES.map((side) => placeOf(body, kneeCentre(side)));
    case 'back':
      return [placeOf(body, middleBack)];
    case 'wall': {
      const wall = stoodIn(pose).find(({ kind }) => kind === 'wall')?.ahead ?? 70;
      const hands = BODY_SIDES.map((side) => placeOf(body, grip(side)));
      const high = Math.max(60, ...hands.map(([, y]) => y));
      return [[wall, Math.min(high, 120), 0]];
    }
  }
}

function bandLimb(pose: Pose, body: Body, camera: Camera, ends: readonly [BandEnd, BandEnd]): Limb {
  const [from, to] = [bandSpots(pose, body, ends[0]), bandSpots(pose, body, ends[1])];
  const [left, right] = from;
  const lines =
    ends[0] === ends[1] && left && right
      ? [[left, right] as const]
      : from.length >= to.length
        ? from.map((one, index) => [one, to[index % to.length] ?? one] as const)
        : to.map((one, index) => [from[index % from.length] ?? one, one] as const);
  const marks = lines.map(([a, b]) => mark('line', 'far', openLine([seen(camera, a), seen(camera, b)]), 'band'));
  const near = lines.flat().reduce((sum, at) => sum + nearness(camera, at), 0) / (lines.length * 2);
  return { nearness: near + 12, marks };
}

/** A mat lies under the whole body: from the side its edge, from the ceiling the whole of it. */
export function matMarks(pose: Pose, box: Box): readonly Mark[] {
  if (!stoodIn(pose).some(({ kind }) => kind === 'mat')) return [];
  const [left, right] = [box.left - 6, box.right + 6];
  const [low, high] = pose.view === 'above' ? [box.low - 6, box.high + 6] : [-2.4, 0];
  const outline = closedLine([
    [left, low],
    [right, low],
    [right, high],
    [left, high],
  ]);
  return [mark(pose.view === 'above' ? 'line' : 'solid', 'far', outline, 'room')];
}

/** A bell that leans on the forearm is nearer the viewer than the arm on the near side; one that hangs has the hand before it. */
function leaning(pose: Pose, piece: HeldPiece, body: Body, camera: Camera, side: BodySide): number {
  const arm = armNearness(body, camera, side);
  if (pose.hands[side] === undefined || piece.kind === 'dumbbell' || piece.way[1] > -0.6) return arm - 0.1;
  return arm + (Math.abs(piece.way[2]) > 0.2 ? Math.sign(arm) * 0.1 : -0.1);
}

export function drawKit(pose: Pose, body: Body, camera: Camera): readonly Limb[] {
  const pieces = heldPieces(pose, body).map((piece, index): Limb => {
    const part = partOfPiece(piece, index);
    const marks = piece.kind === 'bell' ? bellMarks(piece, camera, part) : dumbbellMarks(piece, camera, part);
    const hands = piece.hands.map((side) => leaning(pose, piece, body, camera, side));
    return { nearness: hands.length === 0 ? 0.5 : hands.length === 1 ? (hands[0] ?? 0) : 1, marks };
  });
  const rest = pose.kit.flatMap((item: PoseKit): readonly Limb[] => {
    if (item.kind === 'bar') return barLimbs(body, camera, item.held);
    if (item.kind === 'band') return [bandLimb(pose, body, camera, item.ends)];
    return [];
  });
  return [...pieces, ...rest];
}
