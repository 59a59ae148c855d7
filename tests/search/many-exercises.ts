/**
 * A library of any size, grown from a small one: facts of one exercise, a name of words from the names of three, and
 * sentences of others, the same every time. Sentences repeat more than a coach's would, words and facts do not.
 */
import type { Exercise } from '../../src/model/exercise.js';
import { exerciseId } from '../../src/model/identity.js';

/** Whole numbers below `below`, by Lehmer’s generator (Park and Miller 1988): 16807 modulo 2³¹ − 1. */
function drawFrom(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (state * 16_807) % 2_147_483_647;
    return state % below;
  };
}

export function manyExercises(from: readonly Exercise[], count: number): readonly Exercise[] {
  const draw = drawFrom(20_261_129);
  const any = (): Exercise => {
    const one = from[draw(from.length)];
    if (one === undefined) throw new Error('nothing to grow from');
    return one;
  };
  const word = (): string => {
    const words = any().name.split(/[\s,]+/);
    return words[draw(words.length)] ?? '';
  };
  return Array.from({ length: count }, (_, at): Exercise => {
    const facts = any();
    return {
      ...facts,
      id: exerciseId(`${facts.id}-${at}`),
      name: `${word()} ${word()} ${word()}`,
      words: {
        ...facts.words,
        description: any().words.description,
        cues: [...any().words.cues.slice(0, 2), ...any().words.cues.slice(2)],
        easier: [],
        harder: [],
      },
    };
  });
}
