/** Whether parts of the body get to where they are said to be, and stay above what carries them. */
import { BODY_SIDES, type BodySide, type Contact, type HandPlace, type Pose, type Surface } from '../model/pose.js';
import { bodyPlace, freeWeights } from './arm-goals.js';
import { bearingsOf } from './bearing.js';
import { ROUND } from './body-goals.js';
import { type Solid, solidsIn } from './furniture.js';
import { fingertip, grip, shoulder } from './landmarks.js';
import type { PosedBody } from './pose-body.js';
import { FOREARM, SHANK, THIGH } from './proportions.js';
import { aheadOf, heightOf } from './scene.js';
import { type Body, type Landmark, placeOf } from './skeleton.js';
import { facingOf } from './standing.js';
import { dot, lengthOf, minus, turned, type Vector } from './vector.js';

export interface Miss {
  readonly part: string;
  readonly to: string;
  readonly millimetres: number;
}

const nameOf = (contact: Contact): string =>
  contact.side === undefined ? contact.part : `${contact.side} ${contact.part}`;

/** How far each part that bears is from what it bears on, at its worst point. */
export function contactMisses(pose: Pose, body: Body): readonly Miss[] {
  return pose.contacts.map((contact) => {
    const offs = bearingsOf(contact).map(({ at, off }) => {
      const [x, y] = placeOf(body, at);
      if (contact.on !== 'wall') return Math.abs(y - heightOf(pose, contact.on) - off);
      const wall = aheadOf(pose, 'wall') ?? 0;
      return Math.abs(x - wall - (wall >= 0 ? -off : off));
    });
    return { part: nameOf(contact), to: contact.on, millimetres: Math.round(10 * Math.max(0, ...offs)) };
  });
}

const WAYS: Readonly<Partial<Record<HandPlace, Vector>>> = {
  up: [0, 1, 0],
  ahead: [1, 0, 0],
  down: [0, -1, 0],
};

/** Where a straight arm is to point, it is off by how far the hand is ahead of that line, or behind it. */
function offLine(pose: Pose, body: Body, side: BodySide, way: Vector): number {
  const arm = minus(placeOf(body, grip(side)), placeOf(body, shoulder(side)));
  const facing = facingOf(pose.trunk);
  const along = dot(arm, turned(facing, way));
  const across = dot(arm, turned(facing, way[1] === 0 ? [0, 1, 0] : [1, 0, 0]));
  return along < 0 ? lengthOf(arm) : Math.abs(across);
}

function handMiss(pose: Pose, body: Body, side: BodySide, spot: HandPlace): number {
  const way = WAYS[spot];
  if (way) return offLine(pose, body, side, way);
  const hand = placeOf(body, grip(side));
  if (spot === 'floor') return Math.abs(placeOf(body, fingertip(side))[1] - 2);
  if (spot === 'out') {
    const arm = minus(hand, placeOf(body, shoulder(side)));
    return Math.abs(dot(arm, turned(facingOf(pose.trunk), [1, 0, 0])));
  }
  if (spot === 'bell') {
    const ahead = freeWeights(pose).find(({ held }) => held === 'floor')?.ahead ?? 0;
    return Math.hypot(hand[0] - ahead, hand[1] - 26);
  }
  const at = bodyPlace(pose, spot, side);
  return at ? lengthOf(minus(hand, placeOf(body, at))) : 0;
}

const SPOKEN: Readonly<Partial<Record<HandPlace, string>>> = {
  up: 'line straight up',
  ahead: 'line straight ahead',
  down: 'line straight down',
  out: 'line straight out',
};

/** How far each hand is from the place said for it. */
export const handMisses = (pose: Pose, body: Body): readonly Miss[] =>
  BODY_SIDES.flatMap((side) => {
    const spot = pose.hands[side];
    if (spot === undefined) return [];
    const millimetres = Math.round(10 * handMiss(pose, body, side, spot));
    return [{ part: `${side} hand`, to: SPOKEN[spot] ?? spot, millimetres }];
  });

export interface Sunk {
  readonly part: string;
  readonly on: Surface;
  readonly millimetres: number;
}

const HEAD = { at: { segment: 'head', at: [-2.2, 10, 0] }, off: 7.6 } as const;

interface Ball {
  readonly part: string;
  readonly at: Landmark;
  readonly off: number;
}

/** What is asked of the floor, and half-way along the limbs, which may lie across an edge. */
const BALLS: readonly Ball[] = [
  ...BODY_SIDES.flatMap((side): readonly Ball[] => [
    ...ROUND.map(({ part, at, off }) => ({ part: `${side} ${part}`, at: at(side), off })),
    { part: `${side} thigh`, at: { segment: `${side} thigh`, at: [0, -THIGH / 2, 0] }, off: 6.4 },
    { part: `${side} shin`, at: { segment: `${side} shank`, at: [-0.5, -SHANK / 2, 0] }, off: 4.4 },
    { part: `${side} forearm`, at: { segment: `${side} forearm`, at: [0, -FOREARM / 2, 0] }, off: 3.2 },
  ]),
  { part: 'head', ...HEAD },
];

/** How far a ball would have to be moved to be out of a block; less than nothing where it is. */
function depthIn({ along: [from, to], up: [low, high], aside }: Solid, [x, y, z]: Vector, off: number): number {
  if (z < aside[0] || z > aside[1]) return Number.NEGATIVE_INFINITY;
  const below = low > 0 ? y + off - low : Number.POSITIVE_INFINITY;
  return Math.min(x + off - from, to - x + off, high - y + off, below);
}

/** What is below the floor, further than the face of a wall or inside what stands there, by how much; deepest first. */
export function sunkParts({ pose, body }: PosedBody, bodies: readonly PosedBody[]): readonly Sunk[] {
  const wall = pose.kit.some(({ kind }) => kind === 'wall') ? aheadOf(pose, 'wall') : undefined;
  const solids = solidsIn(pose, bodies);
  return BALLS.flatMap(({ part, at, off }): readonly Sunk[] => {
    const place = placeOf(body, at);
    const [x, y] = place;
    const inside = wall === undefined ? 0 : wall >= 0 ? x + off - wall : wall - x + off;
    const depths = [
      ['floor', off - y] as const,
      ['wall', inside] as const,
      ...solids.map((solid) => [solid.kind, depthIn(solid, place, off)] as const),
    ];
    return depths.map(([on, depth]) => ({ part, on, millimetres: Math.round(10 * depth) }));
  }).sort((a, b) => b.millimetres - a.millimetres);
}
