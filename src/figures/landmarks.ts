/** Named points of the body: what can bear weight, what a hand can go to, and where the mass of each part is. */
import type { BodySide } from '../model/pose.js';
import {
  ANKLE,
  BALL,
  CENTRES,
  FOREARM,
  HAND,
  HEEL,
  MASS_SHARES,
  MID_BACK,
  SHANK,
  THIGH,
  TOE_TIP,
  TRUNK,
  UPPER_ARM,
} from './proportions.js';
import { type Body, type Landmark, placeOf } from './skeleton.js';
import { add, times, type Vector } from './vector.js';

export const heel = (side: BodySide): Landmark => ({ segment: `${side} foot`, at: [HEEL, -ANKLE, 0] });
export const ball = (side: BodySide): Landmark => ({ segment: `${side} foot`, at: [BALL, -ANKLE, 0] });
export const toeTip = (side: BodySide): Landmark => ({ segment: `${side} toes`, at: [TOE_TIP - BALL, 0, 0] });
export const ankle = (side: BodySide): Landmark => ({ segment: `${side} foot`, at: [0, 0, 0] });
/** The centre of the knee. */
export const kneeCentre = (side: BodySide): Landmark => ({ segment: `${side} shank`, at: [0, 0, 0] });
/** The hollow of the upper side of the thigh at the hip, and the upper side of the knee: what a judge of depth sees. */
export const hipCrease = (side: BodySide): Landmark => ({ segment: `${side} thigh`, at: [7.5, -3, 0] });
export const kneeTop = (side: BodySide): Landmark => ({ segment: `${side} thigh`, at: [6, -THIGH + 1, 0] });
export const hip = (side: BodySide): Landmark => ({ segment: `${side} thigh`, at: [0, 0, 0] });
export const shoulder = (side: BodySide): Landmark => ({ segment: `${side} upper arm`, at: [0, 0, 0] });
export const elbow = (side: BodySide): Landmark => ({ segment: `${side} forearm`, at: [0, 0, 0] });
export const wrist = (side: BodySide): Landmark => ({ segment: `${side} hand`, at: [0, 0, 0] });
/** Where a hand grips, and the heel of the palm that a hand leans on. */
export const grip = (side: BodySide): Landmark => ({ segment: `${side} hand`, at: [1, -0.42 * HAND, 0] });
export const palm = (side: BodySide): Landmark => ({ segment: `${side} hand`, at: [-2.2, -3, 0] });
export const knuckles = (side: BodySide): Landmark => ({ segment: `${side} hand`, at: [-1.7, -0.55 * HAND, 0] });
export const fingertip = (side: BodySide): Landmark => ({ segment: `${side} hand`, at: [0, -HAND, 0] });

export const hipsMiddle: Landmark = { segment: 'pelvis', at: [0, 0, 0] };
export const pelvisRight: Landmark = { segment: 'pelvis', at: [0, 0, 10] };
export const pelvisAhead: Landmark = { segment: 'pelvis', at: [10, 0, 0] };
const onThorax = (x: number, y: number, z: number): Landmark => ({ segment: 'thorax', at: [x, y - MID_BACK, z] });
export const shouldersMiddle = onThorax(0, TRUNK, 0);
export const thoraxRight = onThorax(0, TRUNK, 10);
export const upperBack = onThorax(-10.5, TRUNK - 7, 0);
export const middleBack = onThorax(-9.5, MID_BACK + 3, 0);
export const nose: Landmark = { segment: 'head', at: [12.5, 6, 0] };
export const headCentre: Landmark = { segment: 'head', at: [1, 9.5, 0] };
export const headTop: Landmark = { segment: 'head', at: [1, 19.5, 0] };
export const thighFront = (side: BodySide): Landmark => ({ segment: `${side} thigh`, at: [8, -THIGH * 0.6, 0] });
export const shinFront = (side: BodySide): Landmark => ({ segment: `${side} shank`, at: [5.5, -SHANK * 0.45, 0] });

interface Massed {
  readonly at: Landmark;
  readonly share: number;
}

function massesOf(): readonly Massed[] {
  const trunk: readonly Massed[] = [
    { at: { segment: 'head', at: [1, 4, 0] }, share: MASS_SHARES.head },
    { at: onThorax(0, TRUNK - 14, 0), share: MASS_SHARES.thorax },
    { at: { segment: 'abdomen', at: [0, 4, 0] }, share: MASS_SHARES.abdomen },
    { at: { segment: 'pelvis', at: [-1, 3, 0] }, share: MASS_SHARES.pelvis },
  ];
  const limbs = (['left', 'right'] as const).flatMap((side): readonly Massed[] => [
    { at: { segment: `${side} upper arm`, at: [0, -UPPER_ARM * CENTRES.upperArm, 0] }, share: MASS_SHARES.upperArm },
    { at: { segment: `${side} forearm`, at: [0, -FOREARM * CENTRES.forearm, 0] }, share: MASS_SHARES.forearm },
    { at: { segment: `${side} hand`, at: [0, -HAND * CENTRES.hand, 0] }, share: MASS_SHARES.hand },
    { at: { segment: `${side} thigh`, at: [0, -THIGH * CENTRES.thigh, 0] }, share: MASS_SHARES.thigh },
    { at: { segment: `${side} shank`, at: [0, -SHANK * CENTRES.shank, 0] }, share: MASS_SHARES.shank },
    { at: { segment: `${side} foot`, at: [(HEEL + TOE_TIP) / 2, -ANKLE / 2, 0] }, share: MASS_SHARES.foot },
  ]);
  return [...trunk, ...limbs];
}

export const MASSES = massesOf();

/** The centre of mass of the body alone. */
export const massCentre = (body: Body): Vector =>
  MASSES.reduce<Vector>((sum, { at, share }) => add(sum, times(placeOf(body, at), share)), [0, 0, 0]);
