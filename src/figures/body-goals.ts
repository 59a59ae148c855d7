/** A position → what the trunk, legs and feet are to do: where they bear, what angles were said, and what is comfortable. */
import { BODY_SIDES, type BodySide, type Contact, type OnSides, type Pose } from '../model/pose.js';
import { bearingsOf, KNEE_ROUND, SEAT_ROUND, spotOf } from './bearing.js';
import {
  ankle,
  ball,
  elbow,
  headCentre,
  heel,
  hipsMiddle,
  kneeCentre,
  knuckles,
  nose,
  palm,
  pelvisAhead,
  pelvisRight,
  shoulder,
  shouldersMiddle,
  thoraxRight,
  toeTip,
  wrist,
} from './landmarks.js';
import { BODY_MASS, TRUNK } from './proportions.js';
import { KEPT } from './ranges.js';
import { aheadOf, heightOf } from './scene.js';
import { type Angle, angleIndex, type Body, type Landmark, LIMB_ANGLES, placeOf } from './skeleton.js';
import type { Bound, Goal } from './solve-posture.js';
import { facingOf, footSpots, RIGHTWARD, toesOut, turnOf } from './standing.js';
import { about, radians, turned, UP, type Vector } from './vector.js';

/** A body said to have been so in the position before. */
export interface Before {
  readonly pose: Pose;
  readonly body: Body;
}

export const FIRM = 12;
const SAID = 90;
/** A trunk of which nothing is said keeps its shape rather than let a limb off. */
const STIFF = 45;
const X: Vector = [1, 0, 0];

export const place = (
  to: Landmark,
  direction: Vector,
  target: number,
  weight: number,
  more: { readonly from?: Landmark; readonly bound?: Bound } = {},
): Goal => ({
  kind: 'place',
  to,
  direction,
  target,
  weight,
  bound: more.bound ?? 'exactly',
  ...(more.from ? { from: more.from } : {}),
});

export const angle = (name: Angle, degrees: number, weight: number, bound: Bound = 'exactly'): Goal => ({
  kind: 'angle',
  index: angleIndex(name),
  target: radians(degrees),
  weight,
  bound,
});

export const isLying = (pose: Pose): boolean =>
  pose.trunk.lying !== undefined ||
  pose.contacts.some(({ part }) => part === 'back' || part === 'shoulders' || part === 'belly');

/** What bears the body keeps to its surface, and what bore it before keeps its spot. */
export function contactGoals(pose: Pose, before: Before | undefined): readonly Goal[] {
  return pose.contacts.flatMap((contact) => [...surfaceGoals(pose, contact), ...spotGoals(pose, contact, before)]);
}

function surfaceGoals(pose: Pose, contact: Contact): readonly Goal[] {
  if (contact.on === 'wall') {
    const wall = aheadOf(pose, 'wall') ?? 0;
    const inward = wall >= 0 ? -1 : 1;
    const flat = bearingsOf(contact).map(({ at, off }) => place(at, X, wall + inward * off, FIRM));
    return contact.part === 'hand' && contact.side ? [...flat, ...fingersUp(contact.side)] : flat;
  }
  const high = heightOf(pose, contact.on);
  return bearingsOf(contact).map(({ at, off }) => place(at, UP, high + off, FIRM));
}

/** A hand on a wall is about as high as the chest, fingers upwards, unless more is said. */
const fingersUp = (side: BodySide): readonly Goal[] => [
  place(knuckles(side), UP, 7, 3, { from: palm(side) }),
  place(palm(side), UP, -10, 0.3, { from: shoulder(side) }),
  place(palm(side), RIGHTWARD, 0, 0.3, { from: shoulder(side) }),
];

const sameSpot = (a: Contact, b: Contact): boolean =>
  a.side === b.side && a.on === b.on && (a.part === b.part || (isFoot(a) && isFoot(b)));
const isFoot = ({ part }: Contact): boolean => part === 'foot' || part === 'toes' || part === 'heel';

function spotGoals(pose: Pose, contact: Contact, before: Before | undefined): readonly Goal[] {
  const stood = before?.pose.contacts.find((one) => sameSpot(one, contact));
  const feetMoved =
    isFoot(contact) && contact.side !== undefined && before !== undefined && footMoves(pose, before, contact.side);
  if (before && stood && !feetMoved && !slides(pose, before.pose, contact)) {
    const spot =
      stood.part === contact.part
        ? spotOf(contact)
        : isFoot(contact) && contact.side
          ? ball(contact.side)
          : spotOf(contact);
    const was = placeOf(before.body, spot);
    const across = contact.on === 'wall' ? [place(spot, UP, was[1], FIRM)] : [place(spot, X, was[0], FIRM)];
    return [...across, place(spot, RIGHTWARD, was[2], FIRM)];
  }
  if (isFoot(contact) && contact.side) return footGoals(pose, contact, contact.side, before);
  const ahead = contact.on === 'wall' ? undefined : aheadOf(pose, contact.on);
  return ahead === undefined ? [] : [place(spotOf(contact), X, ahead, 3)];
}

/** What lies against a wall slides along it where the arms, or the whole body, are said to move. */
const slides = (pose: Pose, was: Pose, contact: Contact): boolean =>
  contact.on === 'wall' &&
  (contact.side === undefined ||
    (contact.part !== 'foot' && (pose.shoulders !== was.shoulders || pose.hands !== was.hands)));

const isPlaced = (pose: Pose, side: BodySide): boolean =>
  pose.feet[side].ahead !== undefined || pose.feet[side].out !== undefined;

/** A foot stays unless its cell was written anew and speaks of it, or spoke of it before, or of neither foot. */
function footMoves(pose: Pose, { pose: was }: Before, side: BodySide): boolean {
  if (pose.feet === was.feet) return false;
  if (isPlaced(pose, side) || isPlaced(was, side)) return true;
  const other = side === 'left' ? 'right' : 'left';
  return !isPlaced(pose, other) && !isPlaced(was, other) && pose.feet.apart !== was.feet.apart;
}

const staysDown = (pose: Pose, before: Before, side: BodySide): boolean =>
  !footMoves(pose, before, side) && standsInBoth(pose, before, side);

const standsInBoth = (pose: Pose, { pose: was }: Before, side: BodySide): boolean =>
  [pose, was].every(({ contacts }) => contacts.some((one) => one.side === side && isFoot(one)));

/** A foot newly set down stands where the cell on feet says, from the other one where that has not moved. */
function footGoals(pose: Pose, contact: Contact, side: BodySide, before: Before | undefined): readonly Goal[] {
  const spots = footSpots(pose);
  const other = side === 'left' ? 'right' : 'left';
  const still = before && staysDown(pose, before, other) ? placeOf(before.body, ankle(other)) : undefined;
  const from: Vector = still ? [still[0] - spots[other][0], 0, still[2] - spots[other][1]] : [0, 0, 0];
  const surface = aheadOf(pose, contact.on);
  const spot = contact.part === 'toes' ? ball(side) : ankle(side);
  const alone = before !== undefined && pose.feet[side].ahead === undefined && !staysDown(pose, before, other);
  const forward =
    contact.on === 'wall' || (alone && surface === undefined) ? undefined : (surface ?? from[0] + spots[side][0]);
  const turn = facingOf(pose.trunk);
  const [x, z] = [forward ?? 0, from[2] + spots[side][1]];
  const at = surface === undefined ? turned(turn, [x, 0, z]) : ([x, 0, z] as const);
  return [
    ...(forward === undefined
      ? []
      : [place(spot, X, at[0] + (surface === undefined ? 0 : -6), surface === undefined ? FIRM : 4)]),
    place(spot, RIGHTWARD, at[2], FIRM),
  ];
}

/** Feet on the floor point a little outwards. */
export function footGuides(pose: Pose): readonly Goal[] {
  const out = toesOut(pose);
  return pose.contacts.flatMap((contact): readonly Goal[] => {
    if (!isFoot(contact) || !contact.side || contact.on === 'wall') return [];
    const way = turned(about('y', contact.side === 'right' ? -out : out), turned(facingOf(pose.trunk), RIGHTWARD));
    const [from, to] =
      contact.part === 'toes' ? [ball(contact.side), toeTip(contact.side)] : [heel(contact.side), ball(contact.side)];
    if (isLying(pose) && pose.trunk.lying?.endsWith('side down')) return [];
    return [place(to, way, 0, 2, { from })];
  });
}

/** The trunk: how it leans, bends and turns, as said; else as it was, or upright. */
export function trunkGoals(pose: Pose): readonly Goal[] {
  const { trunk } = pose;
  const turn = turnOf(trunk);
  const firm = trunk.lean !== undefined ? 4 : isLying(pose) ? 0.15 : 0.05;
  const square =
    trunk.facing !== undefined || trunk.tip !== undefined || trunk.lying?.endsWith('side down') ? 1.5 : 0.8;
  const [forward, , right] = turn;
  return [
    place(shouldersMiddle, forward, 0, firm, { from: hipsMiddle }),
    place(shouldersMiddle, right, 0, trunk.sideBend === undefined ? square : 0.05, { from: hipsMiddle }),
    place(pelvisRight, UP, right[1] * 10, square, { from: hipsMiddle }),
    place(pelvisRight, forward, 0, square, { from: hipsMiddle }),
    ...(liesFlat(pose)
      ? [place(pelvisRight, UP, 0, 2, { from: hipsMiddle }), place(thoraxRight, UP, 0, 2, { from: shouldersMiddle })]
      : []),
    ...(trunk.lying ? [place(pelvisAhead, turn[1], 0, 0.02, { from: hipsMiddle })] : []),
    angle('bend', trunk.bend ?? 0, trunk.bend === undefined ? STIFF : SAID),
    angle('side bend', trunk.sideBend ?? 0, trunk.sideBend === undefined ? STIFF : SAID),
    angle('twist', trunk.turn ?? 0, trunk.turn === undefined ? STIFF : SAID),
  ];
}

const liesFlat = (pose: Pose): boolean =>
  pose.trunk.tip === undefined &&
  pose.trunk.turn === undefined &&
  pose.contacts.some(({ part }) => part === 'back' || part === 'shoulders' || part === 'belly');

const GAZE: Readonly<Record<'ahead' | 'up' | 'down', number>> = { ahead: 0, up: 1, down: -1 };

/** As far as a neck nobody spoke of goes, whatever the balance would like. */
const NECK: readonly Goal[] = [angle('nod', 55, 40, 'most'), angle('nod', -60, 40, 'least')];

export function headGoals(pose: Pose): readonly Goal[] {
  const { head } = pose;
  const turn = angle('head turn', head.turn ?? 0, head.turn === undefined ? 6 : SAID);
  if (head.gaze) {
    return [
      place(nose, UP, 11.5 * GAZE[head.gaze] - 3.5 * (1 - Math.abs(GAZE[head.gaze])), 1.2, { from: headCentre }),
      angle('nod', 0, 1),
      ...NECK,
      turn,
    ];
  }
  return head.nod === undefined ? [angle('nod', 0, 8), ...NECK, turn] : [angle('nod', head.nod, SAID), turn];
}

type Said = { readonly flex?: number; readonly out?: number; readonly turn?: number };

const ballGoals = (
  side: BodySide,
  joint: 'hip' | 'shoulder',
  said: Said,
  rest: Required<Said>,
  weight: number,
): readonly Goal[] => [
  angle(`${side} ${joint} flex`, said.flex ?? rest.flex, said.flex === undefined ? weight : SAID),
  angle(`${side} ${joint} out`, said.out ?? rest.out, said.out === undefined ? weight * 2 : SAID),
  angle(`${side} ${joint} turn`, said.turn ?? rest.turn, said.turn === undefined ? weight * 2 : SAID),
];

export function legGoals(pose: Pose): readonly Goal[] {
  return BODY_SIDES.flatMap((side) => {
    const bears = pose.contacts.some((one) => one.side === side && (isFoot(one) || one.part === 'knee'));
    const knee = pose.knees[side];
    const ankleSaid = pose.ankles[side];
    const lying = isLying(pose);
    const tucked = pose.contacts.some((one) => one.side === side && one.part === 'toes');
    return [
      ...ballGoals(side, 'hip', pose.hips[side], { flex: 0, out: 2, turn: bears ? 4 : 0 }, bears ? 0.4 : 1.5),
      angle(`${side} knee`, knee ?? (bears ? 4 : 6), knee === undefined ? (bears ? 0.8 : 3) : SAID),
      angle(
        `${side} ankle`,
        ankleSaid ?? (tucked ? 8 : bears || !lying ? 0 : -25),
        ankleSaid === undefined ? (bears ? 0.5 : 3) : SAID,
      ),
      angle(`${side} toe`, tucked ? 40 : 0, 1),
      ...(tucked ? [place(heel(side), UP, 4, 4, { bound: 'least' })] : []),
    ];
  });
}

/** No joint further than bodies go. */
export const rangeGoals = (): readonly Goal[] =>
  BODY_SIDES.flatMap((side) =>
    LIMB_ANGLES.flatMap((name): readonly Goal[] => [
      angle(`${side} ${name}`, KEPT[name][0], 60, 'least'),
      angle(`${side} ${name}`, KEPT[name][1], 60, 'most'),
    ]),
  );

interface RoundPart {
  /** As a coach calls it. */
  readonly part: string;
  readonly at: (side: BodySide) => Landmark;
  readonly off: number;
}

/** Nothing below the floor. */
export const ROUND: readonly RoundPart[] = [
  { part: 'heel', at: heel, off: 0 },
  { part: 'foot', at: ball, off: 0 },
  { part: 'big toe', at: toeTip, off: 0 },
  { part: 'knee', at: kneeCentre, off: KNEE_ROUND },
  { part: 'elbow', at: elbow, off: 4 },
  { part: 'wrist', at: wrist, off: 2.8 },
  { part: 'hand', at: (side) => ({ segment: `${side} hand`, at: [0, -15, 0] }), off: 2 },
  { part: 'shoulder', at: shoulder, off: 5.6 },
  {
    part: 'hip',
    at: (side) => ({ segment: 'pelvis', at: [-2.6, 0, side === 'right' ? 7.5 : -7.5] }),
    off: SEAT_ROUND,
  },
];

export function floorGoals(): readonly Goal[] {
  return [
    ...BODY_SIDES.flatMap((side) => ROUND.map(({ at, off }) => place(at(side), UP, off, 8, { bound: 'least' }))),
    place({ segment: 'head', at: [-2.2, 10, 0] }, UP, 7.6, 8, { bound: 'least' }),
    place({ segment: 'head', at: [4, 1, 0] }, UP, 6, 8, { bound: 'least' }),
  ];
}

/** The mass over what bears it, where somebody stands, kneels or holds still on hands and feet. */
export function balanceGoals(pose: Pose, carried: Extract<Goal, { kind: 'mass' }>['carried']): readonly Goal[] {
  if (pose.moving || isLying(pose) || pose.contacts.length === 0) return [];
  if (pose.contacts.some(({ on, part }) => on === 'wall' || part === 'seat')) return [];
  const over = pose.contacts.flatMap((contact) => supportEnds(contact));
  return [
    { kind: 'mass', over, direction: X, share: LENGTHWISE, weight: 2.5, carried },
    { kind: 'mass', over, direction: RIGHTWARD, share: SIDEWAYS, weight: 2.5, carried },
  ];
}

/** How much of what bears the body, about its middle, its weight may be over. */
const LENGTHWISE = 0.42;
const SIDEWAYS = 0.7;

function supportEnds(contact: Contact): readonly Landmark[] {
  if (contact.side && contact.part === 'foot') return [heel(contact.side), toeTip(contact.side)];
  return bearingsOf(contact).map(({ at }) => at);
}

/** Where nothing holds the body in its place, it stays about where it was. */
export const homeGoals = (at: Vector): readonly Goal[] => [
  place(hipsMiddle, X, at[0], 0.02),
  place(hipsMiddle, RIGHTWARD, at[2], 0.05),
];

export const shareOfBody = (kilograms: number): number => kilograms / BODY_MASS;

export const firstHeight = (pose: Pose): number => (isLying(pose) ? 12 : TRUNK * 1.7);

export type Spots = OnSides<readonly [number, number]>;
