/**
 * One repetition as so many pictures at equal moments, for leaves to flick: out through every position and back the same
 * way, each way with its share of the leaves by the exercise's tempo. Rests are left to the thumb.
 */
import type { Exercise } from '../model/exercise.js';
import { type Box, type Mark, type Picture, WIDTHS } from '../model/picture.js';
import type { Pose } from '../model/pose.js';
import { bodyBetween } from './between-bodies.js';
import { cameraFor } from './camera.js';
import { alikeIn, drawBody } from './draw-body.js';
import { graspIn } from './draw-exercise.js';
import { drawKit, matMarks } from './draw-kit.js';
import { furnitureMarks } from './furniture.js';
import { timingOf } from './motion.js';
import { boxOf, openLine } from './outlines.js';
import { type PosedBody, poseBodies } from './pose-body.js';

const LEAVES = 12;
/** However fast a way is, so many leaves show it. */
const LEAST = 3;
const MARGIN = 5;

/** A movement that starts and ends gently: how far it has come after a share of its time. */
const gently = (share: number): number => share * share * (3 - 2 * share);

/** `way` from 0, the first position, to 1, the last. */
function bodyAt(bodies: readonly PosedBody[], way: number): PosedBody | undefined {
  const legs = bodies.length - 1;
  const leg = Math.min(legs - 1, Math.floor(way * legs));
  const [from, to] = [bodies[leg], bodies[leg + 1]];
  if (!from || !to) return bodies[0];
  const share = way * legs - leg;
  if (share < 1e-9) return from;
  return share > 1 - 1e-9 ? to : { pose: to.pose, body: bodyBetween(from, to, share) };
}

/** How far out each leaf shows the body: the first position first, the last exactly once. */
function waysOf(out: number, back: number): readonly number[] {
  const there = Math.min(LEAVES - LEAST, Math.max(LEAST, Math.round((LEAVES * out) / (out + back))));
  return Array.from({ length: LEAVES }, (_, leaf) =>
    leaf < there ? gently(leaf / there) : gently(1 - (leaf - there) / (LEAVES - there)),
  );
}

function boxAround(marks: readonly Mark[], view: Pose['view']): Box {
  const { left, right, low, high } = boxOf(marks);
  return {
    left: left - MARGIN,
    right: right + MARGIN,
    low: view === 'above' ? low - MARGIN : Math.min(-WIDTHS.near, low - 2),
    high: high + MARGIN,
  };
}

const ground = ({ left, right }: Box): Mark => ({
  paint: 'line',
  weight: 'far',
  part: 'room',
  outline: openLine([
    [left, -WIDTHS.far / 2],
    [right, -WIDTHS.far / 2],
  ]),
});

/** Twelve pictures with one box, the first position first; none where an exercise has fewer than two positions. */
export function flickFrames({ poses, facts }: Pick<Exercise, 'poses' | 'facts'>): readonly Picture[] {
  const bodies = poseBodies(poses);
  const [first] = bodies;
  if (!first || bodies.length < 2) return [];
  const { out, back } = timingOf(bodies, facts.tempo);
  const leaves = waysOf(out, back).flatMap((way) => bodyAt(bodies, way) ?? []);
  const alike = alikeIn(
    leaves.map(({ pose, body }) => ({ body, camera: cameraFor(pose.view), graspOf: graspIn(pose) })),
  );
  const figures = leaves.map(({ pose, body }) => {
    const camera = cameraFor(pose.view);
    return [...drawBody(body, camera, graspIn(pose), alike), ...drawKit(pose, body, camera)]
      .sort((a, b) => a.nearness - b.nearness)
      .flatMap(({ marks }) => marks);
  });
  const swept = boxOf(figures.flat());
  const rooms = leaves.map(({ pose }) => [...matMarks(pose, swept), ...furnitureMarks(pose, bodies)]);
  const box = boxAround([...figures.flat(), ...rooms.flat()], first.pose.view);
  return figures.map((figure, i): Picture => {
    const floor = leaves[i]?.pose.view === 'above' ? [] : [ground(box)];
    return { marks: [...floor, ...(rooms[i] ?? []), ...figure], box };
  });
}
