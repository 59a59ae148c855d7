/** Positions made by hand for the tests of this room: somebody who stands, changed. */

import { ANGLES, type Angle, type Body, bodyOf, type Posture } from '../../src/figures/skeleton.js';
import { NO_TURN, radians, type Vector } from '../../src/figures/vector.js';
import type { Contact, OnSides, Pose } from '../../src/model/pose.js';
import { standing } from '../fixtures/drawn.js';

export const pose = (name: string, change: Partial<Pose> = {}): Pose => ({ ...standing(name), ...change });
export const both = <Value>(value: Value): OnSides<Value> => ({ left: value, right: value });
export const limb = (
  part: 'foot' | 'toes' | 'knee' | 'hand' | 'forearm',
  on: Contact['on'] = 'floor',
): readonly Contact[] => [
  { part, side: 'left', on },
  { part, side: 'right', on },
];

/** Angles in degrees, the rest as standing at attention, midway between the hips at `at`. */
export function postureOf(angles: Partial<Record<Angle, number>>, at: Vector = [0, 0, 0]): Posture {
  return { at, turn: NO_TURN, angles: ANGLES.map((name) => radians(angles[name] ?? 0)) };
}
export const bent = (angles: Partial<Record<Angle, number>>): Body => bodyOf(postureOf(angles));
