/** What of the body lies on what it bears on: for each contact, points and how far from the surface each is kept. */
import type { BodySide, Contact, LimbSupport, TrunkSupport } from '../model/pose.js';
import { ankle, ball, elbow, heel, kneeCentre, knuckles, palm, toeTip, upperBack, wrist } from './landmarks.js';
import type { Landmark } from './skeleton.js';

export interface Bearing {
  readonly at: Landmark;
  /** From the surface to the point, in centimetres: the thickness of the flesh about a joint. */
  readonly off: number;
}

/** Flesh about the joints, as drawn. */
export const KNEE_ROUND = 5.8;
export const ELBOW_ROUND = 4;
const WRIST_ROUND = 2.8;
export const SEAT_ROUND = 8.7;

const seatCentre: Landmark = { segment: 'pelvis', at: [-2.6, 0, 0] };
const hipJoint = (side: BodySide): Landmark => ({ segment: 'pelvis', at: [-0.5, 1, side === 'right' ? 7 : -7] });
const shoulderJoint = (side: BodySide): Landmark => ({ segment: `${side} upper arm`, at: [0, 0, 0] });
const chestFront: Landmark = { segment: 'thorax', at: [1.5, 5, 0] };
const bellyCentre: Landmark = { segment: 'pelvis', at: [1.2, 3, 0] };

function ofLimb(part: LimbSupport, side: BodySide): readonly Bearing[] {
  switch (part) {
    case 'foot':
      return [
        { at: heel(side), off: 0 },
        { at: ball(side), off: 0 },
        { at: toeTip(side), off: 0 },
      ];
    case 'toes':
      return [
        { at: ball(side), off: 0 },
        { at: toeTip(side), off: 0 },
      ];
    case 'heel':
      return [{ at: heel(side), off: 0 }];
    case 'instep':
      return [
        { at: ankle(side), off: 4.6 },
        { at: toeTip(side), off: 1.5 },
      ];
    case 'knee':
      return [{ at: kneeCentre(side), off: KNEE_ROUND }];
    case 'hand':
      return [
        { at: palm(side), off: 0 },
        { at: knuckles(side), off: 0 },
      ];
    case 'forearm':
      return [
        { at: elbow(side), off: ELBOW_ROUND },
        { at: wrist(side), off: WRIST_ROUND },
      ];
    case 'elbow':
      return [{ at: elbow(side), off: ELBOW_ROUND }];
  }
}

function ofTrunk(part: TrunkSupport): readonly Bearing[] {
  switch (part) {
    case 'back':
      return [
        { at: upperBack, off: 0 },
        { at: seatCentre, off: SEAT_ROUND },
      ];
    case 'shoulders':
      return [{ at: upperBack, off: 0 }];
    case 'seat':
      return [{ at: seatCentre, off: SEAT_ROUND }];
    case 'belly':
      return [
        { at: chestFront, off: 10 },
        { at: bellyCentre, off: SEAT_ROUND },
      ];
    case 'hips':
      return [{ at: bellyCentre, off: SEAT_ROUND }];
    case 'forehead':
      return [{ at: { segment: 'head', at: [4, 13, 0] }, off: 6.5 }];
    case 'left side':
      return [
        { at: hipJoint('left'), off: 9 },
        { at: shoulderJoint('left'), off: 6 },
      ];
    case 'right side':
      return [
        { at: hipJoint('right'), off: 9 },
        { at: shoulderJoint('right'), off: 6 },
      ];
  }
}

export const bearingsOf = (contact: Contact): readonly Bearing[] =>
  contact.side === undefined ? ofTrunk(contact.part) : ofLimb(contact.part, contact.side);

/** The point of a contact that keeps its spot on the floor from one position to the next. */
export function spotOf(contact: Contact): Landmark {
  if (contact.side === undefined) return bearingsOf(contact)[0]?.at ?? seatCentre;
  switch (contact.part) {
    case 'foot':
      return ankle(contact.side);
    case 'toes':
      return ball(contact.side);
    default:
      return ofLimb(contact.part, contact.side)[0]?.at ?? seatCentre;
  }
}
