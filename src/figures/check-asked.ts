/** Whether a position is drawn as the exercise's own words ask. */
import type { FigureAsk } from '../model/figure-ask.js';
import { BODY_SIDES } from '../model/pose.js';
import type { FigureProblems } from '../model/problems-figures.js';
import { hipCrease, kneeTop } from './landmarks.js';
import type { PosedBody } from './pose-body.js';
import { type Body, placeOf } from './skeleton.js';
import { drawnAngle } from './stated-angles.js';

/** Degrees: a limb bent less still looks straight. */
const STRAIGHT = 25;
/** Centimetres of crease above knee at which thighs still look level: with level bones it is 1.5. */
const LEVEL = 3;

/**
 * How far the crease of the hip is above the top of the knee, in centimetres, at the deeper side. Technical rules of
 * powerlifting: the top surface of the legs at the hip joint is to be lower than the top of the knees.
 */
export const creaseAbove = (body: Body): number =>
  Math.min(...BODY_SIDES.map((side) => placeOf(body, hipCrease(side))[1] - placeOf(body, kneeTop(side))[1]));

export type Unasked =
  | { readonly code: 'pose-not-deep'; readonly data: FigureProblems['pose-not-deep'] }
  | { readonly code: 'pose-bent'; readonly data: FigureProblems['pose-bent'] };

function against({ pose: { name }, body }: PosedBody, { text, asks }: FigureAsk): Unasked | undefined {
  if (asks.what === 'deep') {
    const above = creaseAbove(body) - (asks.wanted === 'below' ? 0 : LEVEL);
    if (above <= 0) return undefined;
    const data = { position: name, text, wanted: asks.wanted, millimetres: Math.ceil(10 * creaseAbove(body)) };
    return { code: 'pose-not-deep', data };
  }
  const { limb, both } = asks;
  const bends = BODY_SIDES.map((side) => ({
    side,
    degrees: Math.round(drawnAngle(body, limb === 'arm' ? `${side} elbow` : `${side} knee`)),
  })).sort((a, b) => b.degrees - a.degrees);
  const told = both ? bends[0] : bends[bends.length - 1];
  if (!told || told.degrees <= STRAIGHT) return undefined;
  return { code: 'pose-bent', data: { position: name, limb, text, ...told } };
}

const sameWords = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();

/** What the words ask of this position, the first or a later one, and it does not show. */
export const unasked = (posed: PosedBody, first: boolean, asks: readonly FigureAsk[]): readonly Unasked[] =>
  asks
    .filter(({ phase }) => (phase === undefined ? first : sameWords(phase, posed.pose.name)))
    .flatMap((ask) => against(posed, ask) ?? []);
