/**
 * An exercise's positions → pictures: each alone, and all in a row from left to right, each with where the body was
 * before it and the way from there.
 */
import type { BodySide, Pose } from '../model/pose.js';
import { freeWeights, isHeldBy } from './arm-goals.js';
import { arrowMarks } from './arrow.js';
import { bodyBetween } from './between-bodies.js';
import { cameraFor } from './camera.js';
import { drawBody } from './draw-body.js';
import { drawKit, matMarks } from './draw-kit.js';
import type { Grasp } from './flesh.js';
import { type Box, boxOf, type Mark, openLine, type Picture, shifted, WIDTHS } from './picture.js';
import { type PosedBody, poseBodies } from './pose-body.js';

export interface Position {
  readonly name: string;
  readonly picture: Picture;
}

export interface Drawing {
  readonly positions: readonly Position[];
  /** All positions in a row. */
  readonly row: Picture;
}

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

/** Body and kit of one position, from far to near. */
export function figureMarks({ pose, body }: PosedBody): readonly Mark[] {
  const camera = cameraFor(pose.view);
  return [...drawBody(body, camera, graspIn(pose)), ...drawKit(pose, body, camera)]
    .sort((a, b) => a.nearness - b.nearness)
    .flatMap(({ marks }) => marks);
}

/** The same body, faint, where it was before. */
function ghostMarks({ pose, body }: PosedBody): readonly Mark[] {
  return drawBody(body, cameraFor(pose.view), graspIn(pose))
    .flatMap(({ marks }) => marks)
    .map((mark): Mark => ({ ...mark, weight: 'ghost', part: 'ghost' }));
}

const SHARES = [0, 0.25, 0.5, 0.75, 1];

function positionMarks(posed: PosedBody, before: PosedBody | undefined): readonly Mark[] {
  const figure = figureMarks(posed);
  if (!before || before.pose.view !== posed.pose.view) return figure;
  const bodies = SHARES.map((share) =>
    share === 0 ? before.body : share === 1 ? posed.body : bodyBetween(before, posed, share),
  );
  return [...ghostMarks(before), ...figure, ...arrowMarks(posed.pose, bodies, cameraFor(posed.pose.view))];
}

function grounded(pose: Pose, marks: readonly Mark[]): Picture {
  const tight = boxOf(marks);
  const low = -WIDTHS.near;
  const box: Box = {
    left: tight.left - MARGIN,
    right: tight.right + MARGIN,
    low: Math.min(low, tight.low - 2),
    high: tight.high + MARGIN,
  };
  const ground: Mark = {
    paint: 'line',
    weight: 'far',
    part: 'room',
    outline: openLine([
      [box.left, -WIDTHS.far / 2],
      [box.right, -WIDTHS.far / 2],
    ]),
  };
  return { marks: [ground, ...matMarks(pose, tight), ...marks], box };
}

/** Nothing where an exercise has no table of positions. */
export function drawExercise(poses: readonly Pose[]): Drawing | null {
  const bodies = poseBodies(poses);
  const positions = bodies.map(
    (posed, index): Position => ({
      name: posed.pose.name,
      picture: grounded(posed.pose, positionMarks(posed, bodies[index - 1])),
    }),
  );
  return positions.length === 0 ? null : { positions, row: inARow(positions.map(({ picture }) => picture)) };
}

function inARow(pictures: readonly Picture[]): Picture {
  let right = 0;
  const marks: Mark[] = [];
  let low = 0;
  let high = 0;
  pictures.forEach(({ box, marks: own }, index) => {
    const start = index === 0 ? 0 : right + GAP;
    const by = start - box.left;
    marks.push(...own.map((mark): Mark => ({ ...mark, outline: shifted(mark.outline, [by, 0]) })));
    right = start + box.right - box.left;
    low = Math.min(low, box.low);
    high = Math.max(high, box.high);
  });
  return { marks, box: { left: 0, right, low, high } };
}
