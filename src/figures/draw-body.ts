/** A body → marks in the order they are painted: what is far first, each limb growing out of the trunk. */
import { BODY_SIDES, type BodySide } from '../model/pose.js';
import { type Camera, nearness, seen } from './camera.js';
import {
  armFlesh,
  type Ball,
  EAR,
  type Flesh,
  type Grasp,
  HEAD_FLESH,
  legFlesh,
  NECK_FLESH,
  TRUNK_FLESH,
} from './flesh.js';
import { type Disc, hullOf } from './hull.js';
import {
  ankle,
  elbow,
  fingertip,
  headCentre,
  hip,
  hipsMiddle,
  kneeCentre,
  shoulder,
  shouldersMiddle,
  wrist,
} from './landmarks.js';
import type { Mark, Outline, Weight } from './picture.js';
import { WIDTHS } from './picture.js';
import { type Body, type Landmark, placeOf } from './skeleton.js';

export interface Limb {
  readonly marks: readonly Mark[];
  /** Larger is nearer; the trunk is at nothing. */
  readonly nearness: number;
}

function disc(body: Body, camera: Camera, { segment, at, radius }: Ball, thin: number): Disc {
  return { at: seen(camera, placeOf(body, { segment, at })), radius: Math.max(0.6, radius - thin) };
}

const outlineOf = (body: Body, camera: Camera, balls: readonly Ball[], thin: number): Outline =>
  hullOf(balls.map((ball) => disc(body, camera, ball, thin)));

function fleshMarks(body: Body, camera: Camera, flesh: readonly Flesh[], weight: Weight): readonly Mark[] {
  const thin = WIDTHS[weight] / 2;
  const mark = (paint: Mark['paint'], balls: readonly Ball[], part: string): Mark => ({
    paint,
    weight,
    part,
    outline: outlineOf(body, camera, balls, thin),
  });
  return [
    ...flesh.map(({ balls, edged, moves }) => mark('edge', edged ?? balls, moves)),
    ...flesh.map(({ balls, moves }) => mark('paper', balls, moves)),
  ];
}

const mean = (body: Body, camera: Camera, points: readonly Landmark[]): number =>
  points.reduce((sum, point) => sum + nearness(camera, placeOf(body, point)), 0) / points.length;

function limbNearness(body: Body, camera: Camera, points: readonly Landmark[]): number {
  return mean(body, camera, points) - mean(body, camera, [shouldersMiddle, hipsMiddle]);
}

/** The whole body as limbs and trunk, from far to near. */
export function drawBody(body: Body, camera: Camera, graspOf: (side: BodySide) => Grasp): readonly Limb[] {
  const arms = BODY_SIDES.map((side): Limb => {
    const near = limbNearness(body, camera, [shoulder(side), elbow(side), wrist(side), fingertip(side)]);
    const weight: Weight = near < -3 ? 'far' : 'near';
    return { nearness: near, marks: fleshMarks(body, camera, armFlesh(side, graspOf(side)), weight) };
  });
  const legs = BODY_SIDES.map((side): Limb => {
    const near = limbNearness(body, camera, [hip(side), kneeCentre(side), ankle(side)]);
    const weight: Weight = near < -3 ? 'far' : 'near';
    return { nearness: near * 0.5, marks: fleshMarks(body, camera, legFlesh(side), weight) };
  });
  const trunk: Limb = {
    nearness: -1,
    marks: fleshMarks(body, camera, [...TRUNK_FLESH, NECK_FLESH], 'near'),
  };
  const head: Limb = {
    nearness: mean(body, camera, [headCentre]) > mean(body, camera, [shouldersMiddle]) - 4 ? -0.9 : -1.1,
    marks: fleshMarks(body, camera, HEAD_FLESH, 'near'),
  };
  return [...arms, ...legs, trunk, head].sort((a, b) => a.nearness - b.nearness);
}

export const EARS = EAR;
