/** One repetition as it moves: each part of the first position turned, stretched and carried to where it is at each moment. */
import type { Tempo } from '../model/exercise.js';
import type { Box, Mark, Motion, PartMove, Shift, Spot } from '../model/picture.js';
import type { Pose } from '../model/pose.js';
import { type Camera, cameraFor, seen } from './camera.js';
import { partOfPiece } from './draw-kit.js';
import { heldPieces } from './hold-kit.js';
import { grip, massCentre } from './landmarks.js';
import { farEnd } from './limb-lines.js';
import type { PosedBody } from './pose-body.js';
import { type Body, frameOf, placeOf, SEGMENTS } from './skeleton.js';
import { add, between, times, type Vector } from './vector.js';

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
  const hands = between(placeOf(body, grip('left')), placeOf(body, grip('right')), 0.5);
  const bar = pose.kit.find((item) => item.kind === 'bar');
  if (bar?.kind === 'bar' && bar.held !== 'floor') {
    const at = bar.held === 'back' ? placeOf(body, { segment: 'thorax', at: [-11, 20, 0] }) : hands;
    rods.set('bar', { at: seen(camera, at), way: [0, 1] });
  }
  return rods;
}

/** Lengths on the drawing below this say nothing of a direction. */
const FORESHORTENED = 6;

function shiftBetween(from: Rod, to: Rod): Shift {
  const [length, next] = [Math.hypot(...from.way), Math.hypot(...to.way)];
  const seenBoth = length > FORESHORTENED && next > FORESHORTENED;
  const turn = seenBoth ? Math.atan2(to.way[1], to.way[0]) - Math.atan2(from.way[1], from.way[0]) : 0;
  const stretch = seenBoth ? next / length : 1;
  const [ux, uy] = seenBoth ? [from.way[0] / length, from.way[1] / length] : [1, 0];
  // Stretched along the part, then turned.
  const more = stretch - 1;
  const [s00, s01, s11] = [1 + more * ux * ux, more * ux * uy, 1 + more * uy * uy];
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const [a, c] = [cos * s00 - sin * s01, cos * s01 - sin * s11];
  const [b, d] = [sin * s00 + cos * s01, sin * s01 + cos * s11];
  return { a, b, c, d, e: to.at[0] - a * from.at[0] - c * from.at[1], f: to.at[1] - b * from.at[0] - d * from.at[1] };
}

const isStill = ({ a, b, c, d, e, f }: Shift): boolean =>
  Math.abs(a - 1) + Math.abs(b) + Math.abs(c) + Math.abs(d - 1) < 0.004 && Math.abs(e) + Math.abs(f) < 0.4;

interface Moment {
  readonly at: number;
  readonly posed: PosedBody;
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
function momentsOf(
  bodies: readonly PosedBody[],
  legs: readonly (readonly PosedBody[])[],
  timing: Timing,
): { readonly moments: readonly Moment[]; readonly seconds: number } {
  const seconds = timing.out + timing.held + timing.back + timing.rest;
  const way = legs.flatMap((leg, index) =>
    leg.map((posed, step) => ({ share: (index + (step + 1) / leg.length) / legs.length, posed })),
  );
  const first = bodies[0];
  const out = way.map(({ share, posed }): Moment => ({ at: (when(share) * timing.out) / seconds, posed }));
  const back = [...way].reverse().map(
    ({ share, posed }): Moment => ({
      at: (timing.out + timing.held + when(1 - share) * timing.back) / seconds,
      posed,
    }),
  );
  const start = first ? [{ at: 0, posed: first }] : [];
  const end = first ? [{ at: (timing.out + timing.held + timing.back) / seconds, posed: first }] : [];
  return { moments: [...start, ...out, ...back, ...end], seconds };
}

const key = (moves: PartMove['steps']): string =>
  moves
    .map(
      ({ shift: { a, b, c, d, e, f } }) =>
        [a, b, c, d].map((n) => n.toFixed(2)).join() + [e, f].map((n) => n.toFixed(0)).join(),
    )
    .join(';');

/** `marks` are the first position's own. */
export function motionOf(
  bodies: readonly PosedBody[],
  legs: readonly (readonly PosedBody[])[],
  marks: readonly Mark[],
  box: Box,
  tempo: Tempo,
): Motion {
  const first = bodies[0];
  const { moments, seconds } = momentsOf(bodies, legs, timingOf(bodies, tempo));
  const camera = cameraFor(first?.pose.view ?? 'side');
  const rods = moments.map(({ posed }) =>
    rodsOf(first?.pose ? { ...first.pose, hands: posed.pose.hands } : posed.pose, posed.body, camera),
  );
  const start = rods[0] ?? new Map<string, Rod>();
  const byMove = new Map<string, { parts: string[]; steps: PartMove['steps'] }>();
  for (const part of new Set(marks.map((mark) => mark.part))) {
    const from = start.get(part);
    if (!from) continue;
    const steps = moments.map(({ at }, index) => ({ at, shift: shiftBetween(from, rods[index]?.get(part) ?? from) }));
    if (steps.every(({ shift }) => isStill(shift))) continue;
    const name = key(steps);
    const known = byMove.get(name);
    if (known) known.parts.push(part);
    else byMove.set(name, { parts: [part], steps });
  }
  return { picture: { marks, box }, moves: [...byMove.values()], seconds };
}
