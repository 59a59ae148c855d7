/** A body → marks in the order they are painted: what is far first, each limb growing out of the trunk. */

import type { Mark, Outline, Weight } from '../model/picture.js';
import { WIDTHS } from '../model/picture.js';
import { BODY_SIDES, type BodySide } from '../model/pose.js';
import { type Camera, nearness, seen } from './camera.js';
import { armFlesh, type Ball, type Flesh, type Grasp, HEAD_FLESH, legFlesh, NECK_FLESH, TRUNK_FLESH } from './flesh.js';
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
  const filled = flesh.map(({ balls }) => outlineOf(body, camera, balls, thin));
  const edged = flesh.map((one, index) =>
    one.edged === undefined ? filled[index] : outlineOf(body, camera, one.edged, thin),
  );
  const marks = (paint: Mark['paint'], outlines: readonly (Outline | undefined)[]): readonly Mark[] =>
    flesh.map(({ moves }, index) => ({ paint, weight, part: moves, outline: outlines[index] ?? [] }));
  return [...marks('edge', edged), ...marks('paper', filled)];
}

const mean = (body: Body, camera: Camera, points: readonly Landmark[]): number =>
  points.reduce((sum, point) => sum + nearness(camera, placeOf(body, point)), 0) / points.length;

function limbNearness(body: Body, camera: Camera, points: readonly Landmark[]): number {
  return mean(body, camera, points) - mean(body, camera, [shouldersMiddle, hipsMiddle]);
}

export const armNearness = (body: Body, camera: Camera, side: BodySide): number =>
  limbNearness(body, camera, [shoulder(side), elbow(side), wrist(side), fingertip(side)]);

/** Limbs of which one always lies exactly behind the other. */
export interface Alike {
  readonly arms: boolean;
  readonly legs: boolean;
}

export interface Sight {
  readonly body: Body;
  readonly camera: Camera;
  readonly graspOf: (side: BodySide) => Grasp;
}

/** Centimetres: less than the line is wide. */
const ALIKE = 0.6;

/** Whether one arm, and one leg, hides the other in every position. */
export function alikeIn(sights: readonly Sight[]): Alike {
  const same = (flesh: (side: BodySide, sight: Sight) => readonly Flesh[]): boolean =>
    sights.every((sight) => {
      const [left = [], right = []] = BODY_SIDES.map((side) =>
        flesh(side, sight).flatMap(({ balls }) => balls.map((ball) => disc(sight.body, sight.camera, ball, 0).at)),
      );
      return left.every(([x, y], index) => {
        const other = right[index];
        return other !== undefined && Math.hypot(x - other[0], y - other[1]) < ALIKE;
      });
    });
  return { arms: same((side, { graspOf }) => armFlesh(side, graspOf(side))), legs: same((side) => legFlesh(side)) };
}

/** The whole body as limbs and trunk, from far to near. */
export function drawBody(
  body: Body,
  camera: Camera,
  graspOf: (side: BodySide) => Grasp,
  alike: Alike,
): readonly Limb[] {
  const arms = BODY_SIDES.map((side): Limb => {
    const near = armNearness(body, camera, side);
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
  const shown = (limbs: readonly Limb[], hidden: boolean): readonly Limb[] =>
    hidden ? [...limbs].sort((a, b) => b.nearness - a.nearness).slice(0, 1) : limbs;
  return [...shown(arms, alike.arms), ...shown(legs, alike.legs), trunk, head].sort((a, b) => a.nearness - b.nearness);
}
