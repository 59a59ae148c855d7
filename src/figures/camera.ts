/** From where a position is seen: space → the drawing's plane, and what is nearer. */

import type { Spot } from '../model/picture.js';
import type { View } from '../model/pose.js';
import { dot, radians, UP, type Vector } from './vector.js';

export interface Camera {
  /** Towards the right edge of the drawing. */
  readonly across: Vector;
  /** Towards its upper edge. */
  readonly up: Vector;
  /** Towards the viewer. */
  readonly near: Vector;
}

/** How far the viewer has gone round from the figure's right side towards its front. */
const ROUND: Readonly<Record<Exclude<View, 'above'>, number>> = { side: 0, half: 42, front: 90, back: -90 };

export function cameraFor(view: View): Camera {
  if (view === 'above') return { across: [1, 0, 0], up: [0, 0, -1], near: UP };
  const angle = radians(ROUND[view]);
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return { across: [c, 0, -s], up: UP, near: [s, 0, c] };
}

export const seen = (camera: Camera, point: Vector): Spot => [dot(point, camera.across), dot(point, camera.up)];
export const nearness = (camera: Camera, point: Vector): number => dot(point, camera.near);
