/**
 * From where on something is complained of: how far a joint goes, and how far a body's weight lies outside what bears
 * it. What `check` tells and what an author's sheet marks are both asked here.
 */

import { BODY_SIDES, type BodySide, type Pose } from '../model/pose.js';
import type { JointMotion } from '../model/problems-figures.js';
import { contactMisses } from './check-reach.js';
import type { PosedBody } from './pose-body.js';
import { LENIENCE, MOST, RANGES, SPINE_RANGES } from './ranges.js';
import type { Angle, Body } from './skeleton.js';
import { drawnAngle, statedAngles } from './stated-angles.js';
import { type Fall, fallOf, isHeld } from './support.js';

/** Millimetres: a contact off by more shows. */
export const CONTACT_OFF = 8;
/** The edge of what bears the body is flesh: less than this beyond it nobody sees. */
const FALLING = 10;
/** Degrees. An angle nobody said is the drawing's own choice, and tucked toes force an ankle: nobody can write a little less. */
const UNSAID = 8;

export interface Beyond {
  readonly angle: Angle;
  readonly side?: BodySide;
  readonly motion: JointMotion;
  readonly degrees: number;
  readonly most: number;
}

interface Judged {
  readonly angle: Angle;
  readonly side?: BodySide;
  readonly more?: JointMotion;
  readonly less?: JointMotion;
}

/** In the order in which they are told. */
const JUDGED: readonly Judged[] = [
  ...RANGES.flatMap(({ angle, ...motions }) =>
    BODY_SIDES.map((side): Judged => ({ angle: `${side} ${angle}`, side, ...motions })),
  ),
  ...SPINE_RANGES,
];

/** Every joint that goes further than a body does, both sides of it. */
export function jointsBeyond({ pose, body }: PosedBody): readonly Beyond[] {
  const said = new Set(statedAngles(pose, body).map(({ angle }) => angle));
  // A body stretched after what it cannot reach is told of that alone.
  const stretched = contactMisses(pose, body).some(({ millimetres }) => millimetres > CONTACT_OFF);
  return JUDGED.flatMap(({ angle, side, more, less }) => {
    const drawn = Math.round(drawnAngle(body, angle));
    const [motion, degrees] = drawn > 0 ? [more, drawn] : [less, -drawn];
    if (motion === undefined || (stretched && !said.has(angle))) return [];
    const most = MOST[motion];
    if (degrees <= most + LENIENCE + (said.has(angle) ? 0 : UNSAID)) return [];
    return [{ angle, ...(side === undefined ? {} : { side }), motion, degrees, most }];
  });
}

/** Nothing where it would stand, or where nobody asks. */
export function fallTold(pose: Pose, body: Body): Fall | undefined {
  if (isHeld(pose)) return undefined;
  const fall = fallOf(pose, body);
  return fall !== undefined && fall.beyond * 10 > FALLING ? fall : undefined;
}
