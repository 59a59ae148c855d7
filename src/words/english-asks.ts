/** English for what an exercise asks of the body, as somebody reads it who has not met the words of a description. */
import { type Ask, BODY_PARTS, type BodyPart, type Quality } from '../model/exercise.js';
import { listed } from './listed.js';

interface Part {
  readonly one: string;
  readonly both: string;
}

const PARTS: Readonly<Record<BodyPart, Part>> = {
  neck: { one: 'neck', both: 'neck' },
  shoulder: { one: 'shoulder', both: 'shoulders' },
  elbow: { one: 'elbow', both: 'elbows' },
  wrist: { one: 'wrist', both: 'wrists' },
  hand: { one: 'hand', both: 'hands' },
  'upper back': { one: 'upper back', both: 'upper back' },
  'lower back': { one: 'lower back', both: 'lower back' },
  hip: { one: 'hip', both: 'hips' },
  knee: { one: 'knee', both: 'knees' },
  ankle: { one: 'ankle', both: 'ankles' },
  foot: { one: 'foot', both: 'feet' },
  'pelvic floor': { one: 'pelvic floor', both: 'pelvic floor' },
  belly: { one: 'belly', both: 'belly' },
};

/** After *some* or *much*. */
const QUALITIES: Readonly<Record<Quality, string>> = {
  balance: 'balance',
  grip: 'grip',
  impact: 'impact',
  speed: 'speed',
  floor: 'time on the floor',
  overhead: 'work overhead',
  'breath hold': 'holding of the breath',
  'head down': 'time with the head down',
  'lying on the back': 'lying on the back',
  'spinal load': 'load on the spine',
  'loaded bend': 'bending under load',
  'loaded twist': 'twisting under load',
  'deep bend': 'deep bending',
  'deep twist': 'turning as far as you can',
  reach: 'reach',
  'lifting from the floor': 'lifting from the floor',
};

/** Phases that have a plain wording; others are the author's own words for a part of the movement. */
const PHASES: ReadonlyMap<string, string> = new Map([
  ['bottom', 'at the bottom'],
  ['top', 'at the top'],
  ['down', 'on the way down'],
  ['up', 'on the way up'],
  ['set', 'while you set up'],
  ['out', 'on the way out'],
  ['back', 'on the way back'],
]);

/** `bending under load`; what nobody knows stays as it is written. */
export function sayAsked(what: string): string {
  const known = (text: string): text is Quality => Object.hasOwn(QUALITIES, text);
  return known(what) ? QUALITIES[what] : what;
}

/** As it stands after *leave out*. */
const OUT: Readonly<Record<Quality, string>> = {
  ...QUALITIES,
  speed: 'fast work',
  floor: 'the floor',
  overhead: 'overhead',
  'breath hold': 'held breath',
  'head down': 'head down',
  'deep twist': 'deep turning',
};

const isPart = (of: Ask['of']): of is BodyPart => BODY_PARTS.some((part) => part === of);

const sideOf = (side: Ask['side']): string =>
  side === 'both' ? '' : side === 'working' ? ' on the working side' : ' on the other side';
const whenOf = (phases: readonly string[]): string =>
  phases.length === 0 ? '' : ` ${listed(phases.map((phase) => PHASES.get(phase) ?? `in the part called ${phase}`))}`;

/** What is asked as much, on the same side, at the same time stands together. */
function clause(asks: readonly Ask[]): string {
  const first = asks[0];
  if (first === undefined) return '';
  const things = asks.map(({ of, side }) => (isPart(of) ? PARTS[of][side === 'both' ? 'both' : 'one'] : QUALITIES[of]));
  const of = isPart(first.of) ? 'of the ' : '';
  return `${first.degree} ${of}${listed(things)}${sideOf(first.side)}${whenOf(first.phases)}`;
}

/** `Some of the knees, hips and ankles at the bottom; some grip and load on the spine.` Empty for none. */
export function englishAsked(asks: readonly Ask[]): string {
  const alike = new Map<string, Ask[]>();
  for (const ask of asks) {
    const like = [isPart(ask.of), ask.degree, ask.side, ...ask.phases].join('/');
    alike.set(like, [...(alike.get(like) ?? []), ask]);
  }
  const said = [...alike.values()].map(clause).join('; ');
  return said === '' ? '' : `${said.slice(0, 1).toUpperCase()}${said.slice(1)}.`;
}

/** `overhead`, `knee`: after *leave out*. */
export const englishOut = (of: Ask['of']): string => (isPart(of) ? of : OUT[of]);
