/** How the limbs of a position are, in words: only as much as its table says. */
import { BODY_SIDES, type BodySide, type Contact, type HandPlace, type OnSides, type Pose } from '../model/pose.js';
import type { ArmBend, ArmPlace, DrawingWords, KneeBend, Stance, Whose } from './drawing-words.js';

export const bears = (pose: Pose, part: Contact['part'], side?: Contact['side']): boolean =>
  pose.contacts.some((one) => one.part === part && (side === undefined || one.side === side));

export const onFeet = (pose: Pose, side: BodySide): boolean =>
  bears(pose, 'foot', side) || bears(pose, 'toes', side) || bears(pose, 'heel', side);

/** Both at once where they are alike, else each of which something is known, the left one first. */
function onSides<Value>(
  { left, right }: OnSides<Value | undefined>,
  alike: (a: Value, b: Value) => boolean,
): readonly (readonly [Whose, Value])[] {
  if (left !== undefined && right !== undefined && alike(left, right)) return [['both', left]];
  const each: readonly (readonly [BodySide, Value | undefined])[] = [
    ['left', left],
    ['right', right],
  ];
  return each.flatMap(([side, value]): readonly (readonly [Whose, Value])[] =>
    value === undefined ? [] : [[side, value]],
  );
}

const same = <Value>(a: Value, b: Value): boolean => a === b;

/** Centimetres: further out or apart than one would stand. */
const OUT = 25;
const WIDE = 55;

export function feetOf({ feet }: Pose, words: DrawingWords): readonly string[] {
  const out = BODY_SIDES.filter((side) => (feet[side].out ?? 0) >= OUT).map((side) => words.footOut(side));
  return (feet.apart ?? 0) >= WIDE ? [words.feetWide, ...out] : out;
}

const LITTLE = 12;
const MUCH = 40;
const DEEP = 95;
/** Degrees between two knees that are bent alike to the eye. */
const ALIKE = 25;

const kneeBend = (degrees: number): KneeBend =>
  degrees < LITTLE ? 'straight' : degrees < MUCH ? 'a little' : degrees < DEEP ? 'bent' : 'deep';

export function kneesOf({ knees }: Pose, words: DrawingWords): readonly string[] {
  const { left, right } = knees;
  if (left !== undefined && right !== undefined && Math.abs(left - right) <= ALIKE) {
    return [words.knees[kneeBend(Math.max(left, right))]];
  }
  return BODY_SIDES.flatMap((side) => {
    const degrees = knees[side];
    return degrees === undefined ? [] : [words.oneKnee(side, kneeBend(degrees))];
  });
}

/** Stances in which a leg that bears nothing is held up. */
const UP_IN: readonly Stance[] = [
  'standing on one leg',
  'on hands and knees',
  'on hands and feet',
  'on the forearms',
  'on the back',
  'bridging',
];
/** Of a hip: less than this and the leg of somebody who lies is near the floor. */
const LOW = 45;

export function legsOf(pose: Pose, stance: Stance, words: DrawingWords): readonly string[] {
  if (!UP_IN.includes(stance)) return [];
  const lifted = (side: BodySide): 'up' | 'low' | undefined => {
    if (onFeet(pose, side) || bears(pose, 'knee', side) || bears(pose, 'instep', side)) return undefined;
    if (stance !== 'on the back') return 'up';
    const { flex } = pose.hips[side];
    return flex === undefined ? undefined : flex < LOW ? 'low' : 'up';
  };
  return onSides({ left: lifted('left'), right: lifted('right') }, same).map(([whose, how]) =>
    how === 'low' ? words.legLow(whose) : words.legLifted(whose),
  );
}

interface Arm {
  readonly bend: ArmBend | undefined;
  readonly place: ArmPlace | undefined;
}

/** Degrees of an elbow. */
const STRAIGHT = 20;
const BENT = 60;

const armBend = (degrees: number | undefined): ArmBend | undefined =>
  degrees === undefined ? undefined : degrees < STRAIGHT ? 'straight' : degrees < BENT ? 'a little' : 'bent';

/** Degrees of a shoulder. */
const ASIDE = 60;
const ACROSS = -20;
const BEHIND = -15;
const BEFORE = 45;
const BY_THE_HEAD = 135;
const HANGS = 25;

function armPlace({ shoulders, trunk: { lean }, elbows }: Pose, side: BodySide): ArmPlace | undefined {
  const { flex, out = 0 } = shoulders[side];
  if (flex === undefined && out === 0) return undefined;
  const raised = flex ?? 0;
  const straight = armBend(elbows[side]) !== 'bent';
  if (raised >= BY_THE_HEAD) return 'head';
  if (out >= ASIDE) return 'out';
  if (out <= ACROSS) return 'across';
  if (straight && lean !== undefined && Math.abs(raised - lean) < HANGS) return 'hanging';
  return raised >= BEFORE ? 'before' : raised <= BEHIND ? 'behind' : 'beside';
}

/** Arms whose hands have no place of their own; where hands carry somebody who lies, the elbows alone tell. */
export function armsOf(pose: Pose, stance: Stance, words: DrawingWords): readonly string[] {
  const carried = stance === 'on hands and feet' || stance === 'on hands and knees';
  const armOf = (side: BodySide): Arm | undefined => {
    if (pose.hands[side] !== undefined || bears(pose, 'forearm', side)) return undefined;
    const bend = armBend(pose.elbows[side]);
    const place = carried && bears(pose, 'hand', side) ? undefined : armPlace(pose, side);
    return bend === undefined && place === undefined ? undefined : { bend, place };
  };
  return onSides(
    { left: armOf('left'), right: armOf('right') },
    (a, b) => a.bend === b.bend && a.place === b.place,
  ).map(([whose, { bend, place }]) => words.arm(whose, bend, place));
}

/** Where the hands are: two alike without saying whose. */
export function handPlaces(
  pose: Pose,
  words: DrawingWords,
): readonly { readonly place: string; readonly alone: string }[] {
  const placeOf = (place: HandPlace): string =>
    place === 'up' && pose.trunk.lying !== undefined ? words.handToCeiling : words.hands[place];
  const said = onSides(pose.hands, same).map(([whose, hand]) => {
    const place = placeOf(hand);
    return { place, alone: whose === 'both' ? words.bothHands(place) : words.oneHand(whose, place) };
  });
  return [...said, ...leaning(pose, words)];
}

/** A hand that bears weight beside the feet or the seat; who is on both hands is said to be so already. */
function leaning(pose: Pose, words: DrawingWords): readonly { readonly place: string; readonly alone: string }[] {
  const on = (side: BodySide) => pose.contacts.find((one) => one.part === 'hand' && one.side === side)?.on;
  if (pose.trunk.lying !== undefined) return [];
  return onSides({ left: on('left'), right: on('right') }, same).map(([whose, surface]) => {
    const place = words.on[surface];
    return { place, alone: whose === 'both' ? words.bothHands(place) : words.oneHand(whose, place) };
  });
}
