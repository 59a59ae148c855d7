/**
 * An exercise's positions → pictures: each alone, and all in a row from left to right, each with where the body was
 * before it and the way from there.
 */

import type { Exercise } from '../model/exercise.js';
import { type Box, type Drawing, type Mark, type Position, type Row, type RowPlace, WIDTHS } from '../model/picture.js';
import type { BodySide, Pose, View } from '../model/pose.js';
import { freeWeights, isHeldBy } from './arm-goals.js';
import { arrowMarks } from './arrow.js';
import { bodiesOnTheWay } from './between-bodies.js';
import { cameraFor } from './camera.js';
import { type Alike, alikeIn, drawBody } from './draw-body.js';
import { drawKit, matMarks } from './draw-kit.js';
import type { Grasp } from './flesh.js';
import { furnitureMarks } from './furniture.js';
import { motionOf, stepsFor } from './motion.js';
import { boxOf, openLine } from './outlines.js';
import { type PosedBody, poseBodies } from './pose-body.js';

/** Between positions in a row, in centimetres. */
const GAP = 16;
const MARGIN = 5;

export const graspIn =
  (pose: Pose) =>
  (side: BodySide): Grasp => {
    const bears = pose.contacts.some((one) => one.side === side && one.part === 'hand');
    const held =
      freeWeights(pose).some((item) => isHeldBy(item, side)) ||
      pose.hands[side] === 'bell' ||
      pose.kit.some(
        (item) =>
          (item.kind === 'bar' && item.held !== 'floor') || (item.kind === 'band' && item.ends.includes('hands')),
      );
    return held && !bears ? 'closed' : 'open';
  };

/** Body and kit of one position, from far to near. `alike` are limbs of which the farther one is hidden throughout. */
function figureMarks({ pose, body }: PosedBody, alike: Alike): readonly Mark[] {
  const camera = cameraFor(pose.view);
  return [...drawBody(body, camera, graspIn(pose), alike), ...drawKit(pose, body, camera)]
    .sort((a, b) => a.nearness - b.nearness)
    .flatMap(({ marks }) => marks);
}

function wayTo(leg: readonly PosedBody[], before: PosedBody | undefined): readonly Mark[] {
  const last = leg[leg.length - 1];
  if (!before || !last || before.pose.view !== last.pose.view) return [];
  return arrowMarks(last.pose, [before.body, ...leg.map(({ body }) => body)], cameraFor(last.pose.view));
}

interface Seen {
  readonly posed: PosedBody;
  readonly figure: readonly Mark[];
  readonly furniture: readonly Mark[];
  readonly mat: readonly Mark[];
  readonly arrow: readonly Mark[];
  readonly box: Box;
}

function ground(left: number, right: number): Mark {
  const y = -WIDTHS.far / 2;
  return {
    paint: 'line',
    weight: 'far',
    part: 'room',
    outline: openLine([
      [left, y],
      [right, y],
    ]),
  };
}

const roomOf = ({ posed, furniture, mat }: Seen, box: Box): readonly Mark[] => [
  ...(posed.pose.view === 'above' ? [] : [ground(box.left, box.right)]),
  ...mat,
  ...furniture,
];

function spread(box: Box, more: Box): Box {
  return {
    left: Math.min(box.left, more.left),
    right: Math.max(box.right, more.right),
    low: Math.min(box.low, more.low),
    high: Math.max(box.high, more.high),
  };
}

const framed = (tight: Box, view: View): Box => ({
  left: tight.left - MARGIN,
  right: tight.right + MARGIN,
  low: view === 'above' ? tight.low - MARGIN : Math.min(-WIDTHS.near, tight.low - 2),
  high: tight.high + MARGIN,
});

/** Nothing where an exercise has no table of positions. */
export function drawExercise({ poses, facts }: Pick<Exercise, 'poses' | 'facts'>): Drawing | null {
  const bodies = poseBodies(poses);
  const alike = alikeIn(
    bodies.map(({ pose, body }) => ({ body, camera: cameraFor(pose.view), graspOf: graspIn(pose) })),
  );
  const legs = bodiesOnTheWay(bodies, (from, to) => stepsFor(from, to, bodies.length - 1));
  const seen = bodies.map((posed, index): Seen => {
    const before = bodies[index - 1];
    const figure = figureMarks(posed, alike);
    const furniture = furnitureMarks(posed.pose, bodies);
    // A mat lies still, as long as all that is done on it.
    const mat = matMarks(posed.pose, boxOf(bodies.flatMap((one) => figureMarks(one, alike))));
    const arrow = wayTo(legs[index - 1] ?? [], before);
    const ghost = before && before.pose.view === posed.pose.view ? figureMarks(before, alike) : [];
    return {
      posed,
      figure,
      furniture,
      mat,
      arrow,
      box: framed(boxOf([...figure, ...furniture, ...mat, ...arrow, ...ghost]), posed.pose.view),
    };
  });
  const [first] = seen;
  if (!first) return null;
  const positions = seen.map((one): Position => {
    const box = framed(boxOf([...one.figure, ...one.furniture, ...one.mat]), one.posed.pose.view);
    return { name: one.posed.pose.name, picture: { marks: [...roomOf(one, box), ...one.figure], box } };
  });
  const swept = positions.map(({ picture }) => picture.box).reduce(spread);
  const moving = [...roomOf(first, swept), ...first.figure];
  return { positions, row: inARow(seen), motion: motionOf(bodies, legs, moving, swept, facts.tempo) };
}

function inARow(seen: readonly Seen[]): Row {
  let right = 0;
  const places = seen.map((one, index): RowPlace => {
    const { posed, figure, arrow, box } = one;
    const before = seen[index - 1];
    const ghost = before !== undefined && before.posed.pose.view === posed.pose.view;
    // The first stays where it is; the others are moved by whole centimetres, so that what is alike stays alike when rounded.
    const by = index === 0 ? 0 : Math.round(right + GAP - box.left);
    right = box.right + by;
    return { by, room: roomOf(one, box), ...(ghost ? { ghost: index - 1 } : {}), figure, arrow };
  });
  const whole = seen.map(({ box }) => box).reduce(spread);
  return { places, box: { left: seen[0]?.box.left ?? 0, right, low: whole.low, high: whole.high } };
}
