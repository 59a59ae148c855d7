/** Kit → marks: what is held, what stands on the floor, what is stretched between hands and feet. */

import type { Box, Mark, Outline, Paint, Spot, Weight } from '../model/picture.js';
import { type BandEnd, BODY_SIDES, type BodySide, type Contact, type Pose, type PoseKit } from '../model/pose.js';
import { spotOf } from './bearing.js';
import { type Camera, cameraFor, nearness, seen } from './camera.js';
import { armNearness, type Limb } from './draw-body.js';
import { BALL_RADIUS, type HeldPiece, heldPieces, TO_HANDLE } from './hold-kit.js';
import { ball, grip, kneeCentre, middleBack } from './landmarks.js';
import { circle, closedLine, openLine, smoothLine } from './outlines.js';
import type { PosedBody } from './pose-body.js';
import { type Stood, stoodIn } from './scene.js';
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
  const handle = smoothLine([
    at(6, -6),
    at(12, -7.4),
    at(TO_HANDLE + 0.6, -6),
    at(TO_HANDLE + 0.6, 6),
    at(12, 7.4),
    at(6, 6),
  ]);
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

const PLATE_RADIUS = 22.5;
const BAR_HALF = 90;

function barLimb(body: Body, camera: Camera, held: 'both' | 'back' | 'floor'): Limb {
  const middle: Vector =
    held === 'floor'
      ? [6, PLATE_RADIUS, 0]
      : held === 'back'
        ? placeOf(body, { segment: 'thorax', at: [-11, 20, 0] })
        : between(placeOf(body, grip('left')), placeOf(body, grip('right')), 0.5);
  const across = Math.abs(camera.across[2]);
  const part = 'bar';
  if (across < 0.3) {
    const at = seen(camera, middle);
    return {
      nearness: 40,
      marks: [
        mark('line', 'near', circle(at, PLATE_RADIUS), part),
        mark('line', 'far', circle(at, 15), part),
        mark('solid', 'near', circle(at, 2.4), part),
      ],
    };
  }
  const end = (far: number): Spot => seen(camera, add(middle, [0, 0, far]));
  const plate = (far: number): Outline => {
    const [x, y] = end(far);
    return closedLine([
      [x - 2.5, y - PLATE_RADIUS],
      [x + 2.5, y - PLATE_RADIUS],
      [x + 2.5, y + PLATE_RADIUS],
      [x - 2.5, y + PLATE_RADIUS],
    ]);
  };
  const marks = [
    mark('line', 'near', openLine([end(-BAR_HALF), end(BAR_HALF)]), part),
    mark('solid', 'near', plate(-78), part),
    mark('solid', 'near', plate(78), part),
  ];
  return { nearness: held === 'back' ? -2 : 3, marks };
}

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

/** The middle of what stands somewhere: as said, or under what first bears on it. */
function middleOf(stood: Stood, bodies: readonly PosedBody[]): number {
  if (stood.ahead !== undefined) return stood.ahead;
  for (const { pose, body } of bodies) {
    const bearing = pose.contacts.filter((contact: Contact) => contact.on === stood.kind);
    const spots = bearing.map((contact) => placeOf(body, spotOf(contact))[0]);
    if (spots.length > 0) return spots.reduce((sum, x) => sum + x, 0) / spots.length;
  }
  return 0;
}

/** What stands about the figure in one of its positions; `bodies` are all of them, since it stays where it is. */
export const furnitureMarks = (pose: Pose, bodies: readonly PosedBody[]): readonly Mark[] =>
  stoodIn(pose).flatMap((stood) => furniture(stood, middleOf(stood, bodies), cameraFor(pose.view)));

const HALF_WIDTHS = { chair: 20, bench: 45, box: 24, step: 24, blocks: 9 } as const;

function furniture(stood: Stood, ahead: number, camera: Camera): readonly Mark[] {
  const part = 'room';
  const turned = Math.abs(camera.across[0]) < 0.3;
  const x = turned ? 0 : ahead * camera.across[0];
  const { kind, high } = stood;
  const rect = (left: number, right: number, low: number, top: number): Outline =>
    closedLine([
      [left, low],
      [right, low],
      [right, top],
      [left, top],
    ]);
  const solid = (outline: Outline): readonly Mark[] => [
    mark('edge', 'far', outline, part),
    mark('paper', 'far', outline, part),
  ];
  if (kind === 'wall') {
    if (turned) return [];
    const way = x >= 0 ? 1 : -1;
    const hatches = Array.from({ length: 9 }, (_, index): Mark => {
      const y = 14 + index * 22;
      return mark(
        'line',
        'ghost',
        openLine([
          [x, y],
          [x + way * 9, y + 9],
        ]),
        part,
      );
    });
    return [
      mark(
        'line',
        'near',
        openLine([
          [x, 0],
          [x, high],
        ]),
        part,
      ),
      ...hatches,
    ];
  }
  if (kind === 'mat') return [];
  const half = HALF_WIDTHS[kind];
  if (kind === 'step' || kind === 'box' || kind === 'blocks') return solid(rect(x - half, x + half, 0, high));
  if (kind === 'bench') {
    return [
      mark(
        'line',
        'far',
        openLine([
          [x - half + 8, high - 5],
          [x - half + 4, 0],
        ]),
        part,
      ),
      mark(
        'line',
        'far',
        openLine([
          [x + half - 8, high - 5],
          [x + half - 4, 0],
        ]),
        part,
      ),
      ...solid(rect(x - half, x + half, high - 5, high)),
    ];
  }
  return chairMarks(x, stood, turned, solid, rect, part);
}

const SEAT_HEIGHT = 45;
/** Who holds a chair by the top of its back has the seat beyond. */
const BACK_HELD = 60;

function chairMarks(
  x: number,
  stood: Stood,
  turned: boolean,
  solid: (outline: Outline) => readonly Mark[],
  rect: (left: number, right: number, low: number, top: number) => Outline,
  part: string,
): readonly Mark[] {
  const half = HALF_WIDTHS.chair;
  const { high } = stood;
  const held = high > BACK_HELD;
  const seat = held ? SEAT_HEIGHT : high;
  const top = held ? high : seat + 42;
  const other = stood.turned ? -1 : 1;
  const [back, front] = held ? [x, x + 2 * half * other] : [x - (half + 3) * other, x + half * other];
  if (turned) {
    return [
      ...solid(rect(x - half, x + half, seat + 12, top)),
      ...solid(rect(x - half, x + half, seat - 4, seat)),
      mark(
        'line',
        'far',
        openLine([
          [x - half + 2, seat - 4],
          [x - half + 2, 0],
        ]),
        part,
      ),
      mark(
        'line',
        'far',
        openLine([
          [x + half - 2, seat - 4],
          [x + half - 2, 0],
        ]),
        part,
      ),
    ];
  }
  return [
    mark(
      'line',
      'near',
      openLine([
        [back, 0],
        [back + 1, seat],
        [back, top],
      ]),
      part,
    ),
    mark(
      'line',
      'near',
      openLine([
        [front - 2 * other, seat - 4],
        [front, 0],
      ]),
      part,
    ),
    ...solid(rect(Math.min(back, front), Math.max(back, front), seat - 4, seat)),
  ];
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
    if (item.kind === 'bar') return [barLimb(body, camera, item.held)];
    if (item.kind === 'band') return [bandLimb(pose, body, camera, item.ends)];
    return [];
  });
  return [...pieces, ...rest];
}
