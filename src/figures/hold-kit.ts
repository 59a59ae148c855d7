/** Where kit that is held is in space: a bell hangs, leans on the forearm or stands on its handle as the hand has it. */
import { BODY_SIDES, type BodySide, type Pose } from '../model/pose.js';
import { type FreeWeight, freeWeights, isHeldBy } from './arm-goals.js';
import { elbow, grip, wrist } from './landmarks.js';
import { type Body, placeOf } from './skeleton.js';
import { add, between, minus, times, unit, type Vector } from './vector.js';

/**
 * A competition bell in centimetres: ball 21, whole height 28, handle 3.5 thick, the same for every mass (known at second
 * hand, from a club's page of August 2015, ickbgirls.com, that gives 280, 210 and 35 mm; no rule book seen).
 */
export const BALL_RADIUS = 10.5;
const BELL_HEIGHT = 28;
const HANDLE_THICK = 3.5;
/** From the ball's middle to the middle of the handle. */
export const TO_HANDLE = BELL_HEIGHT - BALL_RADIUS - HANDLE_THICK / 2;

export interface HeldPiece {
  readonly kind: FreeWeight['kind'];
  /** Where it is gripped. */
  readonly grip: Vector;
  /** From the grip towards the ball, or along a dumbbell's handle. */
  readonly way: Vector;
  /** The hand or hands that have it; none where it stands on the floor. */
  readonly hands: readonly BodySide[];
}

const DOWN: Vector = [0, -1, 0];
const out = (side: BodySide): number => (side === 'right' ? 1 : -1);

export function heldPieces(pose: Pose, body: Body): readonly HeldPiece[] {
  return freeWeights(pose).flatMap((item): readonly HeldPiece[] => {
    const hands = BODY_SIDES.filter((side) => isHeldBy(item, side));
    if (item.held === 'floor') {
      const at: Vector = [item.ahead ?? 0, item.kind === 'bell' ? BALL_RADIUS + TO_HANDLE : 7, 0];
      return [{ kind: item.kind, grip: at, way: item.kind === 'bell' ? DOWN : [1, 0, 0], hands: [] }];
    }
    if (item.held === 'both') {
      const at = between(placeOf(body, grip('left')), placeOf(body, grip('right')), 0.5);
      return [{ kind: item.kind, grip: at, way: wayOf(pose, body, item, 'right', true), hands }];
    }
    return hands.map((side) => ({
      kind: item.kind,
      grip: placeOf(body, grip(side)),
      way: wayOf(pose, body, item, side, false),
      hands: [side],
    }));
  });
}

function wayOf(pose: Pose, body: Body, item: FreeWeight, side: BodySide, together: boolean): Vector {
  const spot = pose.hands[side];
  const forearm = unit(minus(placeOf(body, wrist(side)), placeOf(body, elbow(side))));
  if (item.kind === 'dumbbell') return together ? DOWN : Math.abs(forearm[1]) > 0.7 ? [1, 0, 0] : DOWN;
  if (item.upturned || spot === 'head' || spot === 'neck' || spot === 'left ear' || spot === 'right ear')
    return [0, 1, 0];
  // Upright, the forearm takes the bell's weight on its outer side.
  if (forearm[1] > 0.6 && !together) return unit([-0.55, -1, out(side) * 0.5]);
  if (together && spot === 'chest') return unit([0.25, -1, 0]);
  if (spot === 'ahead' || (together && forearm[1] > -0.75 && spot !== 'belly'))
    return unit(add(forearm, times(DOWN, 0.15)));
  return DOWN;
}
