/** A position → what the arms are to do: hands where they are said to be or holding what they hold; else they hang. */
import { BODY_SIDES, type BodySide, type HandPlace, type Pose, type PoseKit } from '../model/pose.js';
import { angle, isLying, place } from './body-goals.js';
import { elbow, fingertip, grip, kneeTop, shinFront, shoulder, thighFront, wrist } from './landmarks.js';
import { FOREARM, HAND, MID_BACK, TRUNK, UPPER_ARM } from './proportions.js';
import type { Landmark } from './skeleton.js';
import type { Goal } from './solve-posture.js';
import { facingOf, RIGHTWARD } from './standing.js';
import { turned, UP, type Vector } from './vector.js';

const SAID = 90;
const AT = 8;
const X: Vector = [1, 0, 0];
const AXES: readonly Vector[] = [X, UP, RIGHTWARD];

const right = (side: BodySide): number => (side === 'right' ? 1 : -1);
const onThorax = (x: number, y: number, z: number): Landmark => ({ segment: 'thorax', at: [x, y - MID_BACK, z] });

export type FreeWeight = Extract<PoseKit, { kind: 'bell' | 'dumbbell' }>;

export const freeWeights = (pose: Pose): readonly FreeWeight[] =>
  pose.kit.filter((item): item is FreeWeight => item.kind === 'bell' || item.kind === 'dumbbell');

export const isHeldBy = (item: FreeWeight, side: BodySide): boolean =>
  item.held === 'both' || item.held === 'each' || item.held === side;

const holdsBar = (pose: Pose): boolean => pose.kit.some((item) => item.kind === 'bar' && item.held === 'both');
const holdsTogether = (pose: Pose): boolean => freeWeights(pose).some(({ held }) => held === 'both');
const bandInHands = (pose: Pose): boolean =>
  pose.kit.some((item) => item.kind === 'band' && item.ends.includes('hands'));

/** Where on the body a hand is put; absent where the place is not on the body. */
export function bodyPlace(pose: Pose, spot: HandPlace, side: BodySide): Landmark | undefined {
  const z = right(side);
  const loaded = freeWeights(pose).some((item) => isHeldBy(item, side));
  switch (spot) {
    case 'chest':
      return onThorax(
        loaded ? 16.5 : 14,
        TRUNK - (holdsTogether(pose) ? 8 : 12),
        z * (holdsTogether(pose) ? 4.5 : loaded ? 14 : 6),
      );
    case 'shoulder':
      return holdsBar(pose) ? onThorax(13, TRUNK - 1, z * 18) : onThorax(loaded ? 14 : 9, TRUNK - 3, z * 15);
    case 'left ear':
    case 'right ear':
      return { segment: 'head', at: [2, 5, (spot === 'right ear' ? 15 : -15) + z * 4.5] };
    case 'neck':
      return { segment: 'head', at: [-14, 2, z * 4.5] };
    case 'ribs':
      return onThorax(4, TRUNK * 0.42, z * 22);
    case 'belly':
      return { segment: 'abdomen', at: [13, 3, z * 4.5] };
    case 'hip':
      return { segment: 'pelvis', at: [5, 11, z * 17] };
    case 'head':
      return { segment: 'head', at: [-5, 8, z * 11] };
    case 'thigh':
      return thighFront(side);
    case 'knee':
      return kneeTop(side);
    case 'shin':
      return shinFront(side);
    default:
      return undefined;
  }
}

const WAYS: Readonly<Record<'up' | 'ahead' | 'down' | 'out', (side: BodySide) => Vector>> = {
  up: () => UP,
  ahead: () => X,
  down: () => [0, -1, 0],
  out: (side) => [0, 0, right(side)],
};

const isWay = (spot: HandPlace): spot is keyof typeof WAYS => Object.hasOwn(WAYS, spot);

/** Two directions square to a third. */
function squareTo(way: Vector): readonly [Vector, Vector] {
  return Math.abs(way[1]) > 0.7 ? [X, RIGHTWARD] : Math.abs(way[0]) > 0.7 ? [UP, RIGHTWARD] : [X, UP];
}

function straightArm(pose: Pose, way: Vector, side: BodySide): readonly Goal[] {
  const [one, other] = squareTo(way);
  const straight = pose.elbows[side] === undefined ? [angle(`${side} elbow`, 0, SAID)] : [];
  return [
    ...straight,
    place(grip(side), one, 0, 3, { from: shoulder(side) }),
    place(grip(side), other, 0, holdsTogether(pose) ? 0.02 : 1.5, { from: shoulder(side) }),
    place(grip(side), way, UPPER_ARM + FOREARM + 0.4 * HAND, 0.5, { from: shoulder(side) }),
    angle(`${side} wrist`, 0, 10),
  ];
}

function handGoals(pose: Pose, side: BodySide): readonly Goal[] {
  const spot = pose.hands[side];
  if (spot === undefined) return [];
  if (isWay(spot)) return straightArm(pose, turned(facingOf(pose.trunk), WAYS[spot](side)), side);
  if (spot === 'floor') return [place(fingertip(side), UP, 2, AT)];
  if (spot === 'bell') {
    const ahead = freeWeights(pose).find(({ held }) => held === 'floor')?.ahead ?? 0;
    return [
      place(grip(side), X, ahead, AT),
      place(grip(side), UP, 26, AT),
      place(grip(side), RIGHTWARD, right(side) * 4.5, AT),
      angle(`${side} wrist`, 0, 4),
    ];
  }
  const at = bodyPlace(pose, spot, side);
  const racked = spot === 'shoulder' && holdsBar(pose);
  const bent = [
    angle(`${side} wrist`, racked ? 75 : 0, racked ? 6 : 3),
    ...(racked ? [angle(`${side} shoulder flex`, 80, 14)] : []),
    ...(spot === 'belly' && !holdsTogether(pose)
      ? [place(fingertip(side), X, 0, 0.4, { from: { segment: 'abdomen', at: [12, 3, 0] } })]
      : []),
  ];
  // A bar on the shoulders lies in the fingers: elbows come before hands.
  return at ? [...AXES.map((axis) => place(grip(side), axis, 0, racked ? 1.5 : AT, { from: at })), ...bent] : [];
}

/** An arm with nothing to do hangs by its own weight, or lies beside who lies. */
function restGoals(pose: Pose, side: BodySide): readonly Goal[] {
  if (isLying(pose)) {
    return [
      angle(`${side} shoulder flex`, pose.trunk.lying === 'face down' ? -4 : 2, 1),
      angle(`${side} shoulder out`, 14, 2),
      angle(`${side} elbow`, 8, 2),
    ];
  }
  return [
    place(elbow(side), X, 0, 0.4, { from: shoulder(side) }),
    place(elbow(side), RIGHTWARD, right(side) * 4, 0.4, { from: shoulder(side) }),
    place(wrist(side), X, 2, 0.3, { from: elbow(side) }),
    angle(`${side} elbow`, 10, 1.5),
  ];
}

/** Hands on one piece are a hand's breadth apart; on a bar a little wider than the shoulders. */
function togetherGoals(pose: Pose): readonly Goal[] {
  const apart = holdsTogether(pose) ? 9 : holdsBar(pose) && pose.hands.left !== 'shoulder' ? 54 : undefined;
  if (apart === undefined) return [];
  const hung = BODY_SIDES.every((side) => pose.hands[side] === undefined && pose.shoulders[side].flex === undefined);
  return [
    place(grip('right'), RIGHTWARD, apart, AT, { from: grip('left') }),
    place(grip('right'), X, 0, AT, { from: grip('left') }),
    place(grip('right'), UP, 0, AT, { from: grip('left') }),
    ...(hung ? BODY_SIDES.map((side) => place(grip(side), UP, -74, 0.3, { from: shoulder(side) })) : []),
  ];
}

function shoulderGoals(pose: Pose, side: BodySide): readonly Goal[] {
  const said = pose.shoulders[side];
  const bears = pose.contacts.some(
    (one) => one.side === side && (one.part === 'hand' || one.part === 'forearm' || one.part === 'elbow'),
  );
  const leans = pose.contacts.some((one) => one.side === side && one.part === 'forearm');
  const elbowSaid = pose.elbows[side];
  const stated = said.flex !== undefined || said.out !== undefined;
  return [
    ...(said.flex === undefined
      ? [angle(`${side} shoulder flex`, bears ? 80 : 15, leans ? 0.6 : 0.15)]
      : [angle(`${side} shoulder flex`, said.flex, SAID)]),
    ...(said.out === undefined
      ? [angle(`${side} shoulder out`, stated ? 2 : 8, stated ? 8 : 0.4)]
      : [angle(`${side} shoulder out`, said.out, SAID)]),
    angle(`${side} shoulder turn`, said.turn ?? 0, said.turn === undefined ? (stated ? 6 : 0.8) : SAID),
    ...(elbowSaid === undefined
      ? [angle(`${side} elbow`, leans ? 90 : bears ? 5 : 12, bears ? 1 : 0.15)]
      : [angle(`${side} elbow`, elbowSaid, SAID)]),
    angle(`${side} wrist`, bears && !leans ? 70 : 0, bears ? 1.2 : 3),
    ...(stated || bears ? [] : [place(elbow(side), UP, -UPPER_ARM, 0.03, { from: shoulder(side) })]),
  ];
}

export function armGoals(pose: Pose): readonly Goal[] {
  const sides = BODY_SIDES.flatMap((side) => {
    const bears = pose.contacts.some(
      (one) => one.side === side && (one.part === 'hand' || one.part === 'forearm' || one.part === 'elbow'),
    );
    const { flex, out } = pose.shoulders[side];
    const idle = !bears && pose.hands[side] === undefined && flex === undefined && out === undefined;
    return [
      ...shoulderGoals(pose, side),
      ...handGoals(pose, side),
      ...(idle && !(bandInHands(pose) && pose.elbows[side] !== undefined) ? restGoals(pose, side) : []),
    ];
  });
  return [...sides, ...togetherGoals(pose)];
}
