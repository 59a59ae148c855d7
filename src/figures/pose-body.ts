/** A table of positions → bodies: each found from the one before it, so that what bears stays where it was. */
import { BODY_SIDES, type BodySide, type Contact, type HandPlace, type Pose } from '../model/pose.js';
import { armGoals, freeWeights, isHeldBy } from './arm-goals.js';
import {
  type Before,
  balanceGoals,
  contactGoals,
  FIRM,
  firstHeight,
  floorGoals,
  footGuides,
  headGoals,
  homeGoals,
  legGoals,
  rangeGoals,
  shareOfBody,
  trunkGoals,
} from './body-goals.js';
import { grip } from './landmarks.js';
import { ANGLES, type Body, bodyOf, type Posture, placeOf } from './skeleton.js';
import { type Goal, solvePosture } from './solve-posture.js';
import { turnOf } from './standing.js';
import { add, radians } from './vector.js';

/** Kilograms a piece in the picture is taken to weigh; only for where the weight of all lies. */
const PIECE = 12;
const BAR = 40;

export interface PosedBody {
  readonly pose: Pose;
  readonly body: Body;
}

/** Free weights in the hands, as shares of the body's mass. */
export function carriedIn(pose: Pose): Extract<Goal, { kind: 'mass' }>['carried'] {
  const bar = pose.kit.find((item) => item.kind === 'bar');
  if (bar?.kind === 'bar' && bar.held === 'back') {
    return [{ at: { segment: 'thorax', at: [-11, 20, 0] }, share: shareOfBody(BAR) }];
  }
  if (bar?.kind === 'bar' && bar.held === 'both') {
    return BODY_SIDES.map((side) => ({ at: grip(side), share: shareOfBody(BAR / 2) }));
  }
  return freeWeights(pose).flatMap((item) => {
    const hands = BODY_SIDES.filter((side) => isHeldBy(item, side));
    const each = item.held === 'both' ? PIECE / 2 : PIECE;
    return hands.map((side) => ({ at: grip(side), share: shareOfBody(each) }));
  });
}

/** Of a bend of the knee over a flat foot, about what the shank takes by leaning forward. */
const SHANK_SHARE = 0.22;

interface Guess {
  readonly hip: number;
  readonly knee: number;
  readonly ankle: number;
  readonly toe: number;
  readonly shoulder: number;
  readonly out: number;
  readonly elbow: number;
  readonly wrist: number;
}

const WORLD: Readonly<Partial<Record<HandPlace, number>>> = { up: 180, ahead: 90, down: 0, floor: 20, bell: 20 };
const BENT: Readonly<Partial<Record<HandPlace, readonly [shoulder: number, elbow: number]>>> = {
  chest: [35, 125],
  shoulder: [35, 140],
  ribs: [-35, 100],
  belly: [5, 95],
  hip: [-20, 80],
  head: [110, 130],
  'left ear': [90, 120],
  'right ear': [90, 120],
  neck: [130, 140],
  thigh: [25, 20],
  knee: [40, 10],
  shin: [40, 5],
};

/** Degrees to begin the search from, so that it ends where a person would. */
function guessFor(pose: Pose, side: BodySide): Guess {
  const { lying, lean = lying === 'face up' ? -90 : lying === 'face down' ? 90 : 0 } = pose.trunk;
  const bears = (part: Contact['part']): boolean =>
    pose.contacts.some((one) => one.part === part && (one.side === undefined || one.side === side));
  const otherKneels = pose.contacts.some(({ part, side: its }) => part === 'knee' && its !== side);
  const onWall = pose.contacts.some(({ on, side: its }) => on === 'wall' && its === side);
  const onSide = lying?.endsWith('side down') === true;
  const hand = pose.hands[side];
  const world = hand && WORLD[hand];
  const bent = hand && BENT[hand];
  const [shoulder, elbow] = bears('forearm')
    ? onSide
      ? [0, 90]
      : [onWall ? 90 + lean : lean, 90]
    : bears('hand')
      ? [onWall ? 90 + lean : lean, 5]
      : world !== undefined
        ? [world + lean, 3]
        : (bent ?? [lying ? 5 : lean + 5, 15]);
  const legs =
    bears('seat') && !lying
      ? { hip: 90 + lean, knee: bears('foot') ? 90 : 10 }
      : bears('knee')
        ? { hip: onSide ? 0 : lean, knee: 90 }
        : bears('foot')
          ? lying === 'face up'
            ? { hip: 50, knee: 90 }
            : otherKneels
              ? { hip: 90 + lean, knee: 90 }
              : { hip: lean + (pose.knees[side] ?? 10) * (1 - SHANK_SHARE), knee: 10 }
          : { hip: bears('toes') && !lying ? lean : 0, knee: 6 };
  const ankle = bears('foot') ? (pose.knees[side] ?? 0) * SHANK_SHARE : bears('toes') ? 10 : 0;
  return {
    ...legs,
    ankle,
    toe: bears('toes') ? 45 : 0,
    shoulder,
    elbow,
    wrist: bears('hand') ? 80 : 0,
    out: hand === 'out' || (onSide && bears('forearm')) ? 90 : 8,
  };
}

function firstGuess(pose: Pose): Posture {
  const angles = ANGLES.map((name) => {
    const [side, ...rest] = name.split(' ');
    if (side !== 'left' && side !== 'right') return 0;
    const joint = rest.join(' ');
    const guess = guessFor(pose, side);
    if (joint === 'knee') return radians(pose.knees[side] ?? guess.knee);
    if (joint === 'elbow') return radians(pose.elbows[side] ?? guess.elbow);
    if (joint === 'hip flex') return radians(pose.hips[side].flex ?? guess.hip);
    if (joint === 'ankle') return radians(pose.ankles[side] ?? guess.ankle);
    if (joint === 'wrist') return radians(guess.wrist);
    if (joint === 'toe') return radians(guess.toe);
    if (joint === 'shoulder flex') return radians(pose.shoulders[side].flex ?? guess.shoulder);
    if (joint === 'hip out') return radians(pose.hips[side].out ?? 4);
    if (joint === 'shoulder out') return radians(pose.shoulders[side].out ?? guess.out);
    return 0;
  });
  return { at: [0, firstHeight(pose), 0], turn: turnOf(pose.trunk), angles };
}

/** Where the trunk is turned anew, the search begins from there; joints go on from where they were. */
function nextGuess(pose: Pose, before: Before): Posture {
  const same = before.pose.trunk === pose.trunk;
  const said = firstGuess(pose);
  const { posture } = before.body;
  const angles = posture.angles.map((was, index) =>
    saysAngle(pose, before, index) ? (said.angles[index] ?? was) : was,
  );
  return { at: posture.at, turn: same ? posture.turn : said.turn, angles };
}

/** Moved bodily so that what bears is as near as can be to where it is to be. */
function settled(guess: Posture, goals: readonly Goal[]): Posture {
  const body = bodyOf(guess);
  const along = (axis: 0 | 1 | 2): number => {
    const misses = goals.flatMap((goal) =>
      goal.kind === 'place' && !goal.from && goal.bound === 'exactly' && goal.weight > 2 && goal.direction[axis] === 1
        ? [goal.target - placeOf(body, goal.to)[axis]]
        : [],
    );
    return misses.length === 0 ? 0 : misses.reduce((sum, miss) => sum + miss, 0) / misses.length;
  };
  return { ...guess, at: add(guess.at, [along(0), along(1), along(2)]) };
}

/** What this row says anew begins from what it says; what it leaves as it was begins from there. */
function saysAngle(pose: Pose, { pose: was }: Before, index: number): boolean {
  const [side, ...rest] = (ANGLES[index] ?? '').split(' ');
  if (side !== 'left' && side !== 'right') return false;
  const joint = rest.join(' ');
  const bears = JSON.stringify(pose.contacts) !== JSON.stringify(was.contacts);
  if (joint === 'elbow' || joint === 'wrist' || joint.startsWith('shoulder')) {
    return bears || pose.hands !== was.hands || pose.shoulders !== was.shoulders || pose.elbows !== was.elbows;
  }
  return bears || pose.knees !== was.knees || pose.hips !== was.hips || pose.trunk !== was.trunk;
}

function goalsOf(pose: Pose, before: Before | undefined, home: Posture): readonly Goal[] {
  return [
    ...contactGoals(pose, before),
    ...footGuides(pose),
    ...trunkGoals(pose),
    ...headGoals(pose),
    ...legGoals(pose),
    ...armGoals(pose),
    ...rangeGoals(),
    ...floorGoals(),
    ...balanceGoals(pose, carriedIn(pose)),
    ...homeGoals(home.at),
  ];
}

/** Found once: a table that is checked and then drawn is not sought through twice. */
const FOUND = new WeakMap<readonly Pose[], readonly PosedBody[]>();

export function poseBodies(poses: readonly Pose[]): readonly PosedBody[] {
  const known = FOUND.get(poses);
  if (known) return known;
  const bodies = bodiesOf(poses);
  FOUND.set(poses, bodies);
  return bodies;
}

function bodiesOf(poses: readonly Pose[]): readonly PosedBody[] {
  const bodies: PosedBody[] = [];
  let before: Before | undefined;
  for (const pose of poses) {
    const guess = before ? nextGuess(pose, before) : firstGuess(pose);
    const goals = goalsOf(pose, before, guess);
    const body = solvePosture(solvePosture(settled(guess, goals), goals).posture, firmer(goals));
    before = { pose, body };
    bodies.push(before);
  }
  return bodies;
}

/** What bears the body is met to fractions of a millimetre once the rest has found its place. */
const firmer = (goals: readonly Goal[]): readonly Goal[] =>
  goals.map((goal) => (goal.kind === 'place' && goal.weight >= FIRM ? { ...goal, weight: goal.weight * 20 } : goal));
