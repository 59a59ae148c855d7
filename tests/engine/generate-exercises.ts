/** A made-up library: some thirty exercises in chains from easy to hard, with random demands, kit, shares and ratios. */
import type { Ask, Exercise, Facts, Pattern, Sides, Version, Way } from '../../src/model/exercise.js';
import { BODY_PARTS, type Cause, QUALITIES } from '../../src/model/exercise.js';
import { exerciseId } from '../../src/model/identity.js';
import type { LoadNeed } from '../../src/model/kit.js';
import type { Place } from '../../src/model/place.js';
import { plainLine } from '../../src/model/prose.js';
import type { Chance } from './chance.js';

export const PLACE: Place = { file: 'made-up.md', line: 1, column: 1, length: 1 };

const PATTERNS_USED: readonly Pattern[] = ['squat', 'hinge', 'lunge', 'push', 'pull', 'brace'];
const CAUSES_USED: readonly Cause[] = ['load', 'range', 'balance', 'kit', 'knee', 'shoulder', 'wrist', 'floor'];
const PHASES = ['down', 'bottom', 'up', 'top'];
const NEEDS: readonly LoadNeed[] = [
  { kind: 'bell', count: 1, unequal: false },
  { kind: 'bell', count: 2, unequal: false },
  { kind: 'bell', count: 2, unequal: true },
  { kind: 'dumbbell', count: 1, unequal: false },
  { kind: 'dumbbell', count: 2, unequal: false },
  { kind: 'bar' },
];

interface Made {
  readonly pattern: Pattern;
  readonly rung: number;
  readonly way: Way;
  readonly sides: Sides;
}

export function generateExercises(chance: Chance): readonly Exercise[] {
  const made = PATTERNS_USED.flatMap((pattern): readonly Made[] => {
    const sides = chance.oneOf<Sides>(['both', 'both', 'each', 'alternate']);
    const rungs = chance.whole(2, 5);
    return Array.from({ length: rungs }, (_, rung) => ({
      pattern,
      rung,
      way: rung === 0 || chance.happens(35) ? 'bodyweight' : 'strength',
      sides: chance.happens(85) ? sides : chance.oneOf<Sides>(['both', 'each']),
    }));
  });
  return made.map((one) => exerciseOf(one, made, chance)).sort((a, b) => (a.id < b.id ? -1 : 1));
}

const idOf = ({ pattern, rung }: Made) => exerciseId(`${pattern}-${rung}`);

function exerciseOf(one: Made, made: readonly Made[], chance: Chance): Exercise {
  const below = made.filter(({ pattern, rung }) => pattern === one.pattern && rung < one.rung);
  const above = made.filter(({ pattern, rung }) => pattern === one.pattern && rung === one.rung + 1);
  const nearest = below.at(-1);
  const further = chance.happens(25) ? below[0] : undefined;
  const easier = [nearest, further === nearest ? undefined : further].filter((to) => to !== undefined);
  const ways = one.rung === 0 || chance.happens(75) ? [wayOf(chance)] : [];
  const id = idOf(one);
  return {
    id,
    formerIds: chance.happens(10) ? [exerciseId(`old-${id}`)] : [],
    name: `Exercise ${id}`,
    facts: factsOf(one, chance),
    words: {
      description: [],
      setUp: [],
      pickUp: [],
      putDown: [],
      cues: chance.some(PHASES, 60).map((phase) => ({ phase, line: plainLine(`Cue for ${phase}`) })),
      breath: [],
      faults: [],
      easier: [...easier.map((to) => linkTo(to, chance)), ...ways],
      harder: chance.some(above, 50).map((to) => linkTo(to, chance)),
      stopIf: [],
      partner: [],
    },
    poses: [],
    place: PLACE,
  };
}

function factsOf({ pattern, way, sides }: Made, chance: Chance): Facts {
  const share = chance.oneOf<number | null>([null, 0, 490, 640, 878]);
  const loaded = way === 'strength';
  const needs = loaded ? [...new Set([chance.oneOf(NEEDS), ...chance.some(NEEDS, 25)])] : [];
  const ceiling = chance.happens(94) ? 'any' : chance.oneOf(['arms overhead', 'load overhead'] as const);
  return {
    pattern,
    way,
    sides,
    kit: {
      load: needs,
      unloaded: loaded ? chance.happens(15) : true,
      things: chance.some(['bench', 'chair', 'wall', 'mat'] as const, 6),
    },
    room: {
      ceiling,
      ...(chance.happens(85) ? {} : { floorMillimetres: { long: 2000, wide: chance.whole(800, 2200) } }),
    },
    holds: loaded ? chance.oneOf(['per-hand', 'total', 'total', 'added'] as const) : 'total',
    ...(share === null ? {} : { bodyShare: { share, standing: 'practice', source: 'made up' } }),
    asks: asksOf(chance),
    signOff: chance.happens(10),
    muscles: { main: [], assisting: [] },
    tempo: chance.oneOf([
      { lower: 2, bottom: 0, lift: 1, top: 0 },
      { lower: 0, bottom: 0, lift: 0, top: 0 },
      { lower: 3, bottom: 1, lift: 'fast', top: 1 },
    ] as const),
    parts: [],
    partsDone: 'as one',
    rehearses: [],
    cools: false,
    onTheFloor: chance.happens(50),
  };
}

function asksOf(chance: Chance): readonly Ask[] {
  const used = [...chance.some(BODY_PARTS, 12), ...chance.some(QUALITIES, 5)];
  return used.map((of) => ({
    of,
    degree: chance.happens(75) ? 'some' : 'much',
    side: chance.oneOf(['both', 'working', 'other'] as const),
    phases: chance.happens(60) ? [] : chance.some(PHASES, 40),
  }));
}

function linkTo(to: Made, chance: Chance): Version {
  return {
    to: { kind: 'exercise', id: idOf(to) },
    say: plainLine(`To ${idOf(to)}`),
    causes: chance.some(CAUSES_USED, 30),
    ...(chance.happens(40)
      ? { ratio: { share: chance.whole(500, 1800), standing: 'practice', source: 'made up' } }
      : {}),
    place: PLACE,
  };
}

function wayOf(chance: Chance): Version {
  return {
    to: { kind: 'way', slug: chance.oneOf(['slower', 'half-depth', 'hand-on-the-wall']) },
    say: plainLine('An easier way'),
    causes: chance.some(CAUSES_USED, 30),
    place: PLACE,
  };
}
