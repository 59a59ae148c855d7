/**
 * What an exercise needs and asks, as the words that the filtering sentence and the lines of the lists share. A line
 * carries them; the style leaves it out where the sentence says so.
 */
import type { Ask, Exercise } from '../../src/model/exercise.js';
import { BODY_PARTS, QUALITIES } from '../../src/model/exercise.js';
import type { LoadNeed, ThingKind } from '../../src/model/kit.js';

/** `alike` and `unlike` are two of a kind. */
export const LOADS = [
  'bell',
  'bell-alike',
  'bell-unlike',
  'dumbbell',
  'dumbbell-alike',
  'dumbbell-unlike',
  'bar',
  'band',
] as const;
export type LoadWord = (typeof LOADS)[number];
const THINGS: readonly ThingKind[] = ['chair', 'wall', 'step', 'box', 'bench', 'mat'];

/** Two unlike are enough where they need not be equal, and two alike are as well. */
const loadWord = (need: LoadNeed): LoadWord => {
  if (need.kind === 'bar' || need.kind === 'band') return need.kind;
  return need.count === 1 ? need.kind : `${need.kind}-${need.unequal ? 'unlike' : 'alike'}`;
};

/** Whatever answers a need for this: of two bells each is one bell. */
export function answersTo(need: LoadWord): readonly LoadWord[] {
  if (need === 'bar' || need === 'band') return [need];
  const kind = need.startsWith('bell') ? 'bell' : 'dumbbell';
  const two: readonly LoadWord[] = [`${kind}-alike`, `${kind}-unlike`];
  return need === kind ? [kind, ...two] : need === `${kind}-unlike` ? two : [`${kind}-alike`];
}

/** `lying on the back` → `lying-on-the-back` */
export const askWord = (of: Ask['of']): string => of.replaceAll(' ', '-');

export interface Fit {
  /** Any one of these; absent where it can be done with nothing in the hands. */
  readonly 'data-load'?: string;
  /** All of these. */
  readonly 'data-with'?: string;
  readonly 'data-asks'?: string;
}

export function fitOf({ facts: { kit, asks } }: Exercise): Fit {
  const loads = kit.unloaded ? [] : LOADS.filter((word) => kit.load.some((need) => loadWord(need) === word));
  const things = THINGS.filter((thing) => kit.things.includes(thing));
  const asked = [...QUALITIES, ...BODY_PARTS].filter((one) => asks.some(({ of }) => of === one));
  return {
    ...(loads.length > 0 ? { 'data-load': loads.join(' ') } : {}),
    ...(things.length > 0 ? { 'data-with': things.join(' ') } : {}),
    ...(asked.length > 0 ? { 'data-asks': asked.map(askWord).join(' ') } : {}),
  };
}

/** Demands one most often wishes to leave out at home; the others stand one step further. Common practice, no source. */
const OFTEN: readonly Ask['of'][] = ['overhead', 'floor', 'impact', 'speed', 'balance', 'grip'];

/** What some exercise of a library needs or asks: only that stands in its sentence. */
export interface Choices {
  readonly loads: readonly LoadWord[];
  readonly things: readonly ThingKind[];
  readonly often: readonly Ask['of'][];
  readonly qualities: readonly Ask['of'][];
  readonly parts: readonly Ask['of'][];
}

export function choicesIn(exercises: readonly Exercise[]): Choices {
  const needed = new Set(exercises.flatMap(({ facts }) => facts.kit.load.map(loadWord)));
  const answering = new Set([...needed].flatMap(answersTo));
  // Two of a kind are worth a word only where some exercise wants two.
  const wanted = (word: LoadWord): boolean => {
    const kind = word.replace(/-.*/, '');
    return needed.has(word) || (answering.has(word) && [...needed].some((one) => one.startsWith(`${kind}-`)));
  };
  const asked = new Set(exercises.flatMap(({ facts }) => facts.asks.map(({ of }) => of)));
  return {
    loads: LOADS.filter(wanted),
    things: THINGS.filter((thing) => exercises.some(({ facts }) => facts.kit.things.includes(thing))),
    often: OFTEN.filter((one) => asked.has(one)),
    qualities: QUALITIES.filter((one) => asked.has(one) && !OFTEN.includes(one)),
    parts: BODY_PARTS.filter((one) => asked.has(one)),
  };
}
