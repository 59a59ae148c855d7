/** The body's outward shape: each part a few balls with a skin stretched about them, so that it can be seen from anywhere. */
import type { BodySide } from '../model/pose.js';
import {
  ANKLE,
  BALL,
  FOREARM,
  HALF_SHOULDERS,
  HAND,
  HEEL,
  MID_BACK,
  SHANK,
  THIGH,
  TOE_TIP,
  TRUNK,
  UPPER_ARM,
} from './proportions.js';
import type { Segment } from './skeleton.js';
import type { Vector } from './vector.js';

/** A ball that goes with a segment: from the segment's joint, in its own directions, in centimetres. */
export interface Ball {
  readonly segment: Segment;
  readonly at: Vector;
  readonly radius: number;
}

export interface Flesh {
  readonly balls: readonly Ball[];
  /** Balls that the line goes round; absent, the same. A limb's line begins a little way down, so that it grows out of the trunk. */
  readonly edged?: readonly Ball[];
  readonly moves: Segment;
}

const pair = (segment: Segment, x: number, y: number, z: number, radius: number): readonly Ball[] => [
  { segment, at: [x, y, -z], radius },
  { segment, at: [x, y, z], radius },
];

export const TRUNK_FLESH: readonly Flesh[] = [
  {
    moves: 'pelvis',
    balls: [
      ...pair('pelvis', -3.4, -0.5, 7.2, 8.8),
      ...pair('pelvis', 1.6, 4, 7.4, 8.2),
      ...pair('abdomen', 0.6, 2, 5.6, 8.4),
    ],
  },
  {
    moves: 'abdomen',
    balls: [...pair('abdomen', 0.6, 1, 5.4, 8.4), ...pair('thorax', 1.2, 3, 6.2, 9)],
  },
  {
    moves: 'thorax',
    balls: [
      ...pair('thorax', 1.2, 1, 6, 8.8),
      ...pair('thorax', 2, TRUNK - MID_BACK - 10, 7.5, 9.6),
      ...pair('thorax', -1.4, TRUNK - MID_BACK - 5, 9, 8),
      ...pair('thorax', -0.4, TRUNK - MID_BACK - 0.5, HALF_SHOULDERS - 1.5, 5.6),
      { segment: 'neck', at: [0, 0, 0], radius: 5 },
    ],
  },
];

export const NECK_FLESH: Flesh = {
  moves: 'neck',
  balls: [
    { segment: 'thorax', at: [-0.6, TRUNK - MID_BACK - 1, 0], radius: 6 },
    { segment: 'head', at: [0.2, 3.4, 0], radius: 5 },
  ],
};

/** The skull, then the face below the brow, then the nose. */
export const HEAD_FLESH: readonly Flesh[] = [
  {
    moves: 'head',
    balls: [
      { segment: 'head', at: [-1.9, 11.4, 0], radius: 8.2 },
      { segment: 'head', at: [2.1, 11.6, 0], radius: 7.8 },
      { segment: 'head', at: [5.2, 2.2, 0], radius: 4.2 },
    ],
  },
  {
    moves: 'head',
    balls: [
      { segment: 'head', at: [8.4, 9.4, 0], radius: 1.4 },
      { segment: 'head', at: [11, 6.4, 0], radius: 1.4 },
      { segment: 'head', at: [8.2, 5.8, 0], radius: 1.6 },
    ],
  },
];

export function legFlesh(side: BodySide): readonly Flesh[] {
  const [thigh, shank, foot, toes]: readonly Segment[] = [
    `${side} thigh`,
    `${side} shank`,
    `${side} foot`,
    `${side} toes`,
  ];
  if (!thigh || !shank || !foot || !toes) return [];
  const lower: readonly Ball[] = [
    { segment: thigh, at: [0.8, -THIGH * 0.42, 0], radius: 7.8 },
    { segment: thigh, at: [0.2, -THIGH + 1, 0], radius: 5.9 },
  ];
  return [
    {
      moves: thigh,
      balls: [{ segment: thigh, at: [-0.4, -1, 0], radius: 8.2 }, ...lower],
      edged: [{ segment: thigh, at: [0.2, -THIGH * 0.26, 0], radius: 8 }, ...lower],
    },
    {
      moves: shank,
      balls: [
        { segment: shank, at: [0, 0, 0], radius: 5.7 },
        { segment: shank, at: [-1.5, -SHANK * 0.3, 0], radius: 5.5 },
        { segment: shank, at: [-0.2, -SHANK * 0.62, 0], radius: 4.2 },
      ],
    },
    {
      moves: shank,
      balls: [
        { segment: shank, at: [-0.4, -SHANK * 0.5, 0], radius: 4.6 },
        { segment: shank, at: [-0.3, -SHANK + 1, 0], radius: 3.3 },
      ],
    },
    {
      moves: foot,
      balls: [
        { segment: foot, at: [-0.6, 0.5, 0], radius: 3.6 },
        { segment: foot, at: [HEEL + 3.2, -ANKLE + 3.2, 0], radius: 3.2 },
        { segment: foot, at: [BALL - 1, -ANKLE + 2.6, side === 'right' ? 1.2 : -1.2], radius: 2.6 },
        { segment: foot, at: [BALL - 1, -ANKLE + 2.6, side === 'right' ? -1.6 : 1.6], radius: 2.6 },
      ],
    },
    {
      moves: toes,
      balls: [
        { segment: foot, at: [BALL - 1, -ANKLE + 2.6, side === 'right' ? 1.2 : -1.2], radius: 2.6 },
        { segment: foot, at: [BALL - 1, -ANKLE + 2.6, side === 'right' ? -1.6 : 1.6], radius: 2.6 },
        { segment: toes, at: [TOE_TIP - BALL - 1.9, 1.9, 0], radius: 1.9 },
      ],
    },
  ];
}

/** An open hand, or one closed about a handle. */
export type Grasp = 'open' | 'closed';

export function armFlesh(side: BodySide, grasp: Grasp): readonly Flesh[] {
  const [upper, fore, hand]: readonly Segment[] = [`${side} upper arm`, `${side} forearm`, `${side} hand`];
  if (!upper || !fore || !hand) return [];
  const lower: readonly Ball[] = [
    { segment: upper, at: [0.4, -UPPER_ARM * 0.5, 0], radius: 4.6 },
    { segment: upper, at: [0, -UPPER_ARM + 0.5, 0], radius: 3.9 },
  ];
  const arm: readonly Flesh[] = [
    {
      moves: upper,
      balls: [{ segment: upper, at: [0, -0.5, 0], radius: 5.2 }, ...lower],
      edged: [{ segment: upper, at: [0.1, -UPPER_ARM * 0.24, 0], radius: 5 }, ...lower],
    },
    {
      moves: fore,
      balls: [
        { segment: fore, at: [0, 0, 0], radius: 3.9 },
        { segment: fore, at: [0, -FOREARM * 0.28, 0], radius: 4.1 },
        { segment: fore, at: [0, -FOREARM + 0.5, 0], radius: 2.6 },
      ],
    },
  ];
  const closed: Flesh = {
    moves: hand,
    balls: [
      { segment: hand, at: [0, -1, 0], radius: 2.8 },
      { segment: hand, at: [1.6, -HAND * 0.42, 0], radius: 3.6 },
      { segment: hand, at: [-0.8, -HAND * 0.46, 0], radius: 3.3 },
    ],
  };
  const open: readonly Flesh[] = [
    {
      moves: hand,
      balls: [
        { segment: hand, at: [0, -1, 0], radius: 2.7 },
        { segment: hand, at: [0.6, -HAND * 0.45, 0], radius: 3.2 },
        { segment: hand, at: [0, -HAND + 1.6, 0], radius: 1.5 },
      ],
    },
    {
      moves: hand,
      balls: [
        { segment: hand, at: [0.8, -HAND * 0.22, 0], radius: 2 },
        { segment: hand, at: [4.6, -HAND * 0.56, 0], radius: 1.3 },
      ],
    },
  ];
  return grasp === 'closed' ? [...arm, closed] : [...arm, ...open];
}
