/** The angles an author said, each with what the body drawn makes of it. */
import { BODY_SIDES, type BodySide, type Pose, type PoseColumn } from '../model/pose.js';
import { hipsMiddle, shouldersMiddle } from './landmarks.js';
import { type Angle, angleIndex, type Body, placeOf } from './skeleton.js';
import { facingOf } from './standing.js';
import { degrees, dot, minus, UP } from './vector.js';

export interface StatedAngle {
  readonly column: PoseColumn;
  /** As a coach calls it: `left knee`, `lean of the trunk`. */
  readonly what: string;
  /** Degrees. */
  readonly said: number;
  readonly drawn: number;
  /** None for a lean, which is no joint's. */
  readonly angle?: Angle;
}

export const drawnAngle = ({ posture }: Body, angle: Angle): number => degrees(posture.angles[angleIndex(angle)] ?? 0);

/** Of the line from hips to shoulders, from upright, forwards positive, the way the whole body faces. */
export function drawnLean(pose: Pose, body: Body): number {
  const line = minus(placeOf(body, shouldersMiddle), placeOf(body, hipsMiddle));
  return degrees(Math.atan2(dot(line, facingOf(pose.trunk)[0]), dot(line, UP)));
}

function ofSide(pose: Pose, body: Body, side: BodySide): readonly StatedAngle[] {
  const one = (column: PoseColumn, what: string, angle: Angle, said: number | undefined): readonly StatedAngle[] =>
    said === undefined ? [] : [{ column, what, said, drawn: drawnAngle(body, angle), angle }];
  const hip = pose.hips[side];
  const shoulder = pose.shoulders[side];
  return [
    ...one('Hips', `${side} hip`, `${side} hip flex`, hip.flex),
    ...one('Hips', `outward angle of the ${side} hip`, `${side} hip out`, hip.out),
    ...one('Hips', `turn of the ${side} hip`, `${side} hip turn`, hip.turn),
    ...one('Knees', `${side} knee`, `${side} knee`, pose.knees[side]),
    ...one('Ankles', `${side} ankle`, `${side} ankle`, pose.ankles[side]),
    ...one('Shoulders', `${side} shoulder`, `${side} shoulder flex`, shoulder.flex),
    ...one('Shoulders', `outward angle of the ${side} shoulder`, `${side} shoulder out`, shoulder.out),
    ...one('Shoulders', `turn of the ${side} shoulder`, `${side} shoulder turn`, shoulder.turn),
    ...one('Elbows', `${side} elbow`, `${side} elbow`, pose.elbows[side]),
  ];
}

export function statedAngles(pose: Pose, body: Body): readonly StatedAngle[] {
  const { trunk, head } = pose;
  const one = (column: PoseColumn, what: string, angle: Angle, said: number | undefined): readonly StatedAngle[] =>
    said === undefined ? [] : [{ column, what, said, drawn: drawnAngle(body, angle), angle }];
  return [
    ...(trunk.lean === undefined
      ? []
      : [{ column: 'Trunk' as const, what: 'lean of the trunk', said: trunk.lean, drawn: drawnLean(pose, body) }]),
    ...one('Trunk', 'bend of the trunk', 'bend', trunk.bend),
    ...one('Trunk', 'side bend of the trunk', 'side bend', trunk.sideBend),
    ...one('Trunk', 'turn of the chest', 'twist', trunk.turn),
    ...one('Head', 'nod of the head', 'nod', head.nod),
    ...one('Head', 'turn of the head', 'head turn', head.turn),
    ...BODY_SIDES.flatMap((side) => ofSide(pose, body, side)),
  ];
}
