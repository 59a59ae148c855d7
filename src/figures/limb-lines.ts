/** Each part of a body as a line from its joint to its far end. */
import type { Spot } from '../model/picture.js';
import { type Camera, seen } from './camera.js';
import { headCentre } from './landmarks.js';
import {
  ANKLE,
  BALL,
  FOREARM,
  HAND,
  HEAD_JOINT,
  MID_BACK,
  SHANK,
  THIGH,
  TRUNK,
  UPPER_ARM,
  WAIST,
} from './proportions.js';
import { type Body, frameOf, placeOf, SEGMENTS, type Segment } from './skeleton.js';
import type { Vector } from './vector.js';

/** The far end of each segment, in its own directions. */
export function farEnd(segment: Segment): Vector {
  const [, name] = /^(?:left |right )?(.*)$/.exec(segment) ?? [];
  switch (name) {
    case 'pelvis':
      return [0, WAIST, 0];
    case 'abdomen':
      return [0, MID_BACK - WAIST, 0];
    case 'thorax':
      return [0, TRUNK - MID_BACK, 0];
    case 'neck':
      return [0, HEAD_JOINT - TRUNK, 0];
    case 'head':
      return [0, 16, 0];
    case 'upper arm':
      return [0, -UPPER_ARM, 0];
    case 'forearm':
      return [0, -FOREARM, 0];
    case 'hand':
      return [0, -HAND, 0];
    case 'thigh':
      return [0, -THIGH, 0];
    case 'shank':
      return [0, -SHANK, 0];
    case 'foot':
      return [BALL, -ANKLE, 0];
    default:
      return [8, 0, 0];
  }
}

/** A part on the drawing, with half its thickness about. */
export interface LimbLine {
  readonly from: Spot;
  readonly to: Spot;
  readonly round: number;
}

const ROUND: Readonly<Record<string, number>> = { pelvis: 11, abdomen: 11, thorax: 12, thigh: 8, head: 10 };

export function limbLines(body: Body, camera: Camera): readonly LimbLine[] {
  const lines = SEGMENTS.map(
    (segment): LimbLine => ({
      from: seen(camera, frameOf(body, segment).at),
      to: seen(camera, placeOf(body, { segment, at: farEnd(segment) })),
      round: ROUND[segment.replace(/^(left|right) /, '')] ?? 5,
    }),
  );
  const head = seen(camera, placeOf(body, headCentre));
  return [...lines, { from: head, to: head, round: 10 }];
}

/** How far a spot is from a line's nearest point. */
export function farFrom([x, y]: Spot, { from, to }: LimbLine): number {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = dx * dx + dy * dy;
  const share = length === 0 ? 0 : Math.min(1, Math.max(0, ((x - from[0]) * dx + (y - from[1]) * dy) / length));
  return Math.hypot(x - from[0] - share * dx, y - from[1] - share * dy);
}
