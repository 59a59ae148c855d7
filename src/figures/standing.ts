/** Where the whole body is and which way it faces, before anything is sought. */
import type { OnSides, Pose, TrunkAngles } from '../model/pose.js';
import { about, both, NO_TURN, radians, type Turn, type Vector } from './vector.js';

const LYING_TURNS: Readonly<Record<NonNullable<TrunkAngles['lying']>, Turn>> = {
  // Forward, up and right of the body: face up the head is to the left, so that the right side is the nearer one.
  'face up': [
    [0, 1, 0],
    [-1, 0, 0],
    [0, 0, 1],
  ],
  'face down': [
    [0, -1, 0],
    [1, 0, 0],
    [0, 0, 1],
  ],
  'left side down': [
    [0, 0, 1],
    [1, 0, 0],
    [0, 1, 0],
  ],
  'right side down': [
    [0, 0, 1],
    [-1, 0, 0],
    [0, -1, 0],
  ],
};

/** Which way the body faces on the floor, as a turn about the upright. */
export const facingOf = ({ facing = 0 }: TrunkAngles): Turn => about('y', radians(facing));

export function turnOf(trunk: TrunkAngles): Turn {
  const tip = both(facingOf(trunk), about('x', radians(trunk.tip ?? 0)));
  const upright = trunk.lying ? LYING_TURNS[trunk.lying] : about('z', -radians(trunk.lean ?? 0));
  return both(trunk.lying ? about('x', radians(trunk.tip ?? 0)) : tip, upright ?? NO_TURN);
}

const APART = 22;

/** Where the ankles stand, from midway between them, before any is moved ahead or out: x ahead, z to the right. */
export function footSpots({ feet }: Pick<Pose, 'feet'>): OnSides<readonly [number, number]> {
  const half = (feet.apart ?? APART) / 2;
  return {
    left: [feet.left.ahead ?? 0, -half - (feet.left.out ?? 0)],
    right: [feet.right.ahead ?? 0, half + (feet.right.out ?? 0)],
  };
}

/** How far the toes of each foot point outwards, in radians: more in a wide stance, hardly in a stride. */
export function toesOut({ feet }: Pick<Pose, 'feet'>): number {
  if ((feet.left.ahead ?? 0) !== 0 || (feet.right.ahead ?? 0) !== 0) return radians(4);
  return radians(feet.apart !== undefined && feet.apart >= 30 ? 22 : 8);
}

export const RIGHTWARD: Vector = [0, 0, 1];
