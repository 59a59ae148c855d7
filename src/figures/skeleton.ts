/**
 * The figure's joints: which turns which, about what, and where every point of the body is for given angles, with how
 * it moves as each angle changes. Angles are clinical (0 is standing at attention) and in radians.
 */
import type { BodySide } from '../model/pose.js';
import {
  ANKLE,
  FOREARM,
  HALF_HIPS,
  HALF_SHOULDERS,
  HEAD_JOINT,
  MID_BACK,
  NECK_BASE,
  SHANK,
  THIGH,
  TRUNK,
  UPPER_ARM,
  WAIST,
} from './proportions.js';
import { type Axis, about, add, both, NO_TURN, type Turn, turned, type Vector } from './vector.js';

export const SEGMENTS = [
  'pelvis',
  'abdomen',
  'thorax',
  'neck',
  'head',
  'left upper arm',
  'left forearm',
  'left hand',
  'left thigh',
  'left shank',
  'left foot',
  'left toes',
  'right upper arm',
  'right forearm',
  'right hand',
  'right thigh',
  'right shank',
  'right foot',
  'right toes',
] as const;
export type Segment = (typeof SEGMENTS)[number];

const SPINE_ANGLES = ['bend', 'side bend', 'twist', 'nod', 'head turn'] as const;
export const LIMB_ANGLES = [
  'shoulder flex',
  'shoulder out',
  'shoulder turn',
  'elbow',
  'wrist',
  'hip flex',
  'hip out',
  'hip turn',
  'knee',
  'ankle',
  'toe',
] as const;
export type LimbAngle = (typeof LIMB_ANGLES)[number];
export type Angle = (typeof SPINE_ANGLES)[number] | `${BodySide} ${LimbAngle}`;

export const ANGLES: readonly Angle[] = [
  ...SPINE_ANGLES,
  ...LIMB_ANGLES.map((angle): Angle => `left ${angle}`),
  ...LIMB_ANGLES.map((angle): Angle => `right ${angle}`),
];
const ANGLE_AT = new Map(ANGLES.map((angle, index) => [angle, index]));
export const angleIndex = (angle: Angle): number => ANGLE_AT.get(angle) ?? 0;

/** Where a body is and how it is bent; everything else follows. */
export interface Posture {
  /** Midway between the hips. */
  readonly at: Vector;
  /** The pelvis: its forward, upward and rightward axes. */
  readonly turn: Turn;
  /** One for each of `ANGLES`. */
  readonly angles: readonly number[];
}

interface Joint {
  readonly segment: Segment;
  readonly parent: number;
  readonly offset: Vector;
  readonly axis: Axis;
  readonly angle: number;
  /** How much of the angle this joint takes, with the sense of the turn. */
  readonly share: number;
}

interface Hinge {
  readonly axis: Axis;
  readonly angle: Angle;
  readonly share: number;
}

function jointsOf(): readonly Joint[] {
  const joints: Joint[] = [];
  const chain = (segment: Segment, parent: number, offset: Vector, hinges: readonly Hinge[]): number => {
    hinges.forEach(({ axis, angle, share }, index) => {
      joints.push({
        segment,
        parent: index === 0 ? parent : joints.length - 1,
        offset: index === 0 ? offset : [0, 0, 0],
        axis,
        angle: angleIndex(angle),
        share,
      });
    });
    return joints.length - 1;
  };
  const spine = (share: number): readonly Hinge[] => [
    { axis: 'z', angle: 'bend', share: -share },
    { axis: 'x', angle: 'side bend', share },
    { axis: 'y', angle: 'twist', share },
  ];
  const abdomen = chain('abdomen', -1, [0, WAIST, 0], spine(0.5));
  const thorax = chain('thorax', abdomen, [0, MID_BACK - WAIST, 0], spine(0.5));
  const nod = (share: number): readonly Hinge[] => [
    { axis: 'z', angle: 'nod', share: -share },
    { axis: 'y', angle: 'head turn', share },
  ];
  const neck = chain('neck', thorax, [-2, NECK_BASE - MID_BACK, 0], nod(0.5));
  chain('head', neck, [1, HEAD_JOINT - NECK_BASE, 0], nod(0.5));
  for (const side of ['left', 'right'] as const) {
    const right = side === 'right' ? 1 : -1;
    const ball = (joint: 'shoulder' | 'hip'): readonly Hinge[] => [
      { axis: 'z', angle: `${side} ${joint} flex`, share: 1 },
      { axis: 'x', angle: `${side} ${joint} out`, share: -right },
      { axis: 'y', angle: `${side} ${joint} turn`, share: -right },
    ];
    const upperArm = chain(
      `${side} upper arm`,
      thorax,
      [0, TRUNK - MID_BACK, right * HALF_SHOULDERS],
      ball('shoulder'),
    );
    const forearm = chain(
      `${side} forearm`,
      upperArm,
      [0, -UPPER_ARM, 0],
      [{ axis: 'z', angle: `${side} elbow`, share: 1 }],
    );
    chain(`${side} hand`, forearm, [0, -FOREARM, 0], [{ axis: 'z', angle: `${side} wrist`, share: 1 }]);
    const thigh = chain(`${side} thigh`, -1, [0, 0, right * HALF_HIPS], ball('hip'));
    const shank = chain(`${side} shank`, thigh, [0, -THIGH, 0], [{ axis: 'z', angle: `${side} knee`, share: -1 }]);
    const foot = chain(`${side} foot`, shank, [0, -SHANK, 0], [{ axis: 'z', angle: `${side} ankle`, share: 1 }]);
    chain(`${side} toes`, foot, [BALL_AHEAD, -ANKLE, 0], [{ axis: 'z', angle: `${side} toe`, share: 1 }]);
  }
  return joints;
}

const BALL_AHEAD = 0.46 * 0.152 * 175;
const JOINTS = jointsOf();
const LAST_OF = new Map<Segment, number>(JOINTS.map(({ segment }, index) => [segment, index]));
const AXES: Readonly<Record<Axis, Vector>> = { x: NO_TURN[0], y: NO_TURN[1], z: NO_TURN[2] };

/** A point that goes with a segment, from the segment's joint, in the segment's own directions. */
export interface Landmark {
  readonly segment: Segment;
  readonly at: Vector;
}

/** A posture worked out: where each segment's joint is, and which way it is turned. */
export interface Body {
  readonly posture: Posture;
  readonly places: readonly Vector[];
  readonly turns: readonly Turn[];
  /** Each joint's axis in space, its share and sense taken in. */
  readonly axes: readonly Vector[];
}

export function bodyOf(posture: Posture): Body {
  const places: Vector[] = [];
  const turns: Turn[] = [];
  const axes: Vector[] = [];
  for (const joint of JOINTS) {
    const turn = (joint.parent < 0 ? posture.turn : turns[joint.parent]) ?? NO_TURN;
    const place = (joint.parent < 0 ? posture.at : places[joint.parent]) ?? posture.at;
    places.push(add(place, turned(turn, joint.offset)));
    const axis = turned(turn, AXES[joint.axis]);
    axes.push([axis[0] * joint.share, axis[1] * joint.share, axis[2] * joint.share]);
    turns.push(both(turn, about(joint.axis, joint.share * (posture.angles[joint.angle] ?? 0))));
  }
  return { posture, places, turns, axes };
}

export interface Frame {
  readonly at: Vector;
  readonly turn: Turn;
}

export function frameOf(body: Body, segment: Segment): Frame {
  const index = LAST_OF.get(segment);
  if (index === undefined) return { at: body.posture.at, turn: body.posture.turn };
  return { at: body.places[index] ?? body.posture.at, turn: body.turns[index] ?? NO_TURN };
}

export function placeOf(body: Body, { segment, at }: Landmark): Vector {
  const frame = frameOf(body, segment);
  return add(frame.at, turned(frame.turn, at));
}

/** Six for the whole body (three of place, three of turning about the hips), then one for each angle. */
export const FREEDOMS = 6 + ANGLES.length;

/**
 * Adds to `row` how a landmark's height along `direction` changes with each freedom, times `weight`.
 */
export function addSlope(
  body: Body,
  landmark: Landmark,
  place: Vector,
  direction: Vector,
  weight: number,
  row: Float64Array,
): void {
  const [dx, dy, dz] = direction;
  const spin = (axis: Vector, from: Vector): number => {
    const [x, y, z] = [place[0] - from[0], place[1] - from[1], place[2] - from[2]];
    return dx * (axis[1] * z - axis[2] * y) + dy * (axis[2] * x - axis[0] * z) + dz * (axis[0] * y - axis[1] * x);
  };
  const more = (index: number, value: number): void => {
    row[index] = (row[index] ?? 0) + weight * value;
  };
  more(0, dx);
  more(1, dy);
  more(2, dz);
  const { at } = body.posture;
  more(3, spin(AXES.x, at));
  more(4, spin(AXES.y, at));
  more(5, spin(AXES.z, at));
  let index = LAST_OF.get(landmark.segment) ?? -1;
  while (index >= 0) {
    const joint = JOINTS[index];
    const [axis, from] = [body.axes[index], body.places[index]];
    if (!joint || !axis || !from) return;
    more(6 + joint.angle, spin(axis, from));
    index = joint.parent;
  }
}
