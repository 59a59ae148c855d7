/** Made-up exercises of every way of working but the walked ones: swing work, holds, carries, mobility, conditioning, bands, combinations. */
import type { Ask, Exercise, Facts, Pattern, Version } from '../../src/model/exercise.js';
import { exerciseId } from '../../src/model/identity.js';
import type { LoadNeed } from '../../src/model/kit.js';
import { plainLine } from '../../src/model/prose.js';
import type { Chance } from './chance.js';
import { PLACE } from './generate-exercises.js';

const ONE_BELL: LoadNeed = { kind: 'bell', count: 1, unequal: false };
const TWO_BELLS: LoadNeed = { kind: 'bell', count: 2, unequal: false };
const UNLIKE_BELLS: LoadNeed = { kind: 'bell', count: 2, unequal: true };
const BAND: LoadNeed = { kind: 'band' };

const asks = (of: Ask['of'], degree: Ask['degree'] = 'some'): Ask => ({ of, degree, side: 'both', phases: [] });

interface Sketch extends Partial<Omit<Facts, 'kit'>> {
  readonly load?: readonly LoadNeed[];
  readonly unloaded?: boolean;
  readonly things?: Facts['kit']['things'];
  readonly easier?: readonly string[];
}

/** The first of each chain always has an easier way of its own. */
export function generateWays(chance: Chance, walked: readonly Exercise[]): readonly Exercise[] {
  const sketches: readonly (readonly [string, Sketch])[] = [
    ...swings(chance),
    ...holds(chance),
    ...carries(chance),
    ...mobility(chance),
    ...conditioning(chance),
    ...banded(chance),
    ...combinations(chance, walked),
  ];
  return sketches.map(([id, sketch]) => made(id, sketch, chance));
}

const fast = (chance: Chance): Sketch => ({
  way: 'swing',
  pattern: 'hinge',
  holds: 'total',
  load: [ONE_BELL],
  signOff: chance.happens(90),
  asks: [asks('speed', 'much'), ...chance.some([asks('grip'), asks('lower back'), asks('loaded bend')], 50)],
  ...(chance.happens(30) ? { mostReps: chance.whole(4, 12) } : {}),
  onTheFloor: true,
  muscles: { main: ['gluteus maximus', 'hamstrings'], assisting: ['erector spinae'] },
});

const swings = (chance: Chance): readonly (readonly [string, Sketch])[] => [
  ['swing-0', { ...fast(chance), sides: 'both', easier: ['hinge-0'] }],
  ['swing-1', { ...fast(chance), sides: 'each', easier: ['swing-0', 'hinge-0'] }],
  [
    'swing-2',
    {
      ...fast(chance),
      sides: 'both',
      holds: 'per-hand',
      load: [TWO_BELLS],
      room: { ceiling: 'load overhead' },
      easier: ['swing-1', 'hinge-0'],
    },
  ],
];

const holds = (chance: Chance): readonly (readonly [string, Sketch])[] => [
  ['hold-0', { way: 'hold', pattern: 'brace', unloaded: true, muscles: { main: ['rectus abdominis'], assisting: [] } }],
  [
    'hold-1',
    {
      way: 'hold',
      pattern: 'brace',
      unloaded: true,
      sides: chance.oneOf(['both', 'each'] as const),
      asks: [asks('floor'), ...chance.some([asks('shoulder')], 40)],
      muscles: { main: ['obliques'], assisting: ['deltoid'] },
      easier: ['hold-0'],
    },
  ],
  ['hold-2', { way: 'hold', pattern: 'squat', load: [ONE_BELL], holds: 'total', easier: ['hold-0', 'squat-0'] }],
  [
    'balance',
    { way: 'hold', pattern: 'brace', sides: 'each', unloaded: true, asks: [asks('balance')], measure: 'one-leg stand' },
  ],
];

const carries = (chance: Chance): readonly (readonly [string, Sketch])[] => {
  const carry: Sketch = { way: 'carry', pattern: 'carry', holds: 'per-hand', onTheFloor: true, asks: [asks('grip')] };
  return [
    ['carry-0', { ...carry, sides: 'each', load: [ONE_BELL] }],
    ['carry-1', { ...carry, load: [TWO_BELLS], asks: [asks('grip', chance.oneOf(['some', 'much'] as const))] }],
    ['carry-2', { ...carry, load: [UNLIKE_BELLS], easier: ['carry-0'] }],
  ];
};

const mobility = (chance: Chance): readonly (readonly [string, Sketch])[] => {
  const still: Sketch = { way: 'mobility', unloaded: true, pattern: 'mobility' };
  return [
    ['mobility-0', { ...still, rehearses: ['squat', 'hinge', 'lunge'], cools: true }],
    ['mobility-1', { ...still, sides: 'each', rehearses: ['push', 'pull', 'rotate'], cools: chance.happens(70) }],
    ['mobility-2', { ...still, pattern: 'rotate', sides: 'alternate', asks: [asks('upper back')], cools: true }],
  ];
};

const conditioning = (chance: Chance): readonly (readonly [string, Sketch])[] => {
  const breath: Sketch = { way: 'conditioning', pattern: 'travel', unloaded: true };
  return [
    ['travel-0', { ...breath, rehearses: ['travel', 'carry', 'squat'] }],
    ['travel-1', { ...breath, things: chance.some(['step'] as const, 70), asks: [asks('knee')], easier: ['travel-0'] }],
    ['travel-2', { ...breath, asks: [asks('impact', 'much'), asks('ankle')], easier: ['travel-1', 'travel-0'] }],
  ];
};

const banded = (chance: Chance): readonly (readonly [string, Sketch])[] => {
  const band: Sketch = { way: 'strength', holds: 'band', load: [BAND] };
  return [
    [
      'band-pull-0',
      { ...band, pattern: 'pull', muscles: { main: ['latissimus dorsi'], assisting: ['biceps brachii'] } },
    ],
    ['band-push-0', { ...band, pattern: 'push', sides: chance.oneOf(['both', 'each'] as const) }],
    ['helped-pull', { ...band, pattern: 'pull', holds: 'assisted', easier: ['band-pull-0'] }],
  ];
};

/** Of two loaded exercises that are held alike, so that one load can serve both. */
function combinations(chance: Chance, walked: readonly Exercise[]): readonly (readonly [string, Sketch])[] {
  const loaded = walked.filter(({ facts }) => facts.way === 'strength' && facts.holds !== 'added');
  const plain = loaded.filter(({ facts }) => facts.asks.length === 0 && facts.room.ceiling === 'any' && !facts.signOff);
  return [0, 1].flatMap((number) => {
    const from = number === 0 && plain.length > 0 ? plain : loaded;
    const first = from.length === 0 ? undefined : chance.oneOf(from);
    const alike = ({ facts }: Exercise): boolean =>
      facts.holds === first?.facts.holds && (number > 0 || facts.sides === first.facts.sides);
    const others = from.filter((one) => one !== first && alike(one));
    const second = others.length === 0 ? undefined : chance.oneOf(others);
    if (first === undefined || second === undefined) return [];
    const sketch: Sketch = {
      way: 'combination',
      pattern: second.facts.pattern,
      holds: first.facts.holds,
      load: first.facts.kit.load,
      sides: first.facts.sides,
      parts: [first.id, second.id],
      partsDone: chance.oneOf(['as one', 'in turn'] as const),
      asks: chance.some([asks('grip'), asks('shoulder')], 30),
      easier: [first.id],
    };
    return [[`combination-${number}`, sketch] as const];
  });
}

function made(id: string, sketch: Sketch, chance: Chance): Exercise {
  const { load = [], unloaded = false, things = [], easier = [], ...facts } = sketch;
  const links = easier.map(
    (to): Version => ({
      to: { kind: 'exercise', id: exerciseId(to) },
      say: plainLine(`To ${to}`),
      causes: chance.some(['load', 'balance', 'speed', 'floor', 'range', 'kit', 'knee'] as const, 35),
      place: PLACE,
    }),
  );
  const way: Version = {
    to: { kind: 'way', slug: 'a-little-less' },
    say: plainLine('A little less'),
    causes: chance.some(['load', 'range'] as const, 50),
    place: PLACE,
  };
  const pattern: Pattern = facts.pattern ?? 'brace';
  return {
    id: exerciseId(id),
    formerIds: [],
    name: `Exercise ${id}`,
    facts: {
      way: 'strength',
      sides: 'both',
      kit: { load, unloaded, things },
      room: { ceiling: 'any' },
      holds: 'total',
      asks: [],
      signOff: false,
      muscles: { main: [], assisting: [] },
      tempo: { lower: 1, bottom: 0, lift: 1, top: 0 },
      parts: [],
      partsDone: 'as one',
      rehearses: [],
      cools: false,
      onTheFloor: false,
      ...facts,
      pattern,
    },
    words: {
      description: [],
      setUp: [],
      pickUp: [],
      putDown: [],
      cues: [{ phase: 'set', line: plainLine(`Cue for ${id}`) }],
      breath: [],
      faults: [],
      easier: links.length === 0 || chance.happens(85) ? [...links, way] : links,
      harder: [],
      stopIf: [plainLine(`Stop ${id} if it hurts`)],
      partner: [],
    },
    poses: [],
    place: PLACE,
  };
}
