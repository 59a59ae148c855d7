/**
 * The order in which a coach makes an exercise easier: a cue, slower, a shorter range, support, lighter, and only then
 * another exercise. What a way does is read from what it is said to be for.
 */
import type { Cause, Quality } from '../../model/exercise.js';
import type { EasierWay } from './linked-versions.js';

const ORDER: readonly (readonly Cause[])[] = [['speed'], ['range'], ['balance', 'floor'], ['load', 'kit', 'grip']];

/** 0 for a way that is for nothing in particular: a cue. One that is for a body part alone comes last. */
function placeOf({ causes }: Pick<EasierWay, 'causes'>): number {
  if (causes.length === 0) return 0;
  const at = ORDER.findIndex((group) => group.some((cause) => causes.includes(cause)));
  return at < 0 ? ORDER.length + 1 : at + 1;
}

/** Of one place, in the author's order. */
export function inOrderOfRegress<Way extends Pick<EasierWay, 'causes'>>(ways: readonly Way[]): readonly Way[] {
  return ways
    .map((way, index) => ({ way, index }))
    .sort((a, b) => placeOf(a.way) - placeOf(b.way) || a.index - b.index)
    .map(({ way }) => way);
}

/** What an easier version must be for, to answer what a caution concerns. */
export const CAUSES_OF: Readonly<Record<Quality, readonly Cause[]>> = {
  balance: ['balance'],
  speed: ['speed'],
  floor: ['floor'],
  overhead: ['shoulder'],
  'breath hold': ['load'],
  'head down': ['floor'],
  'lying on the back': ['floor'],
  impact: ['speed'],
  'deep bend': ['range'],
  'deep twist': ['range'],
  reach: ['range'],
  'lifting from the floor': ['floor', 'load'],
  'spinal load': ['load'],
  'loaded bend': ['load'],
  'loaded twist': ['load'],
  grip: ['grip', 'hand', 'load'],
};
