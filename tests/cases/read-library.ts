/** The exercises of the cases, from `library.txt`: its own small notation, told in the README beside it. */
import { readFileSync } from 'node:fs';
import {
  type Ask,
  BODY_PARTS,
  CAUSES,
  type Exercise,
  type Facts,
  MEASURES,
  PATTERNS,
  QUALITIES,
  SIDES,
  type Version,
  WAYS,
} from '../../src/model/exercise.js';
import { exerciseId } from '../../src/model/identity.js';
import type { LoadNeed, ThingKind } from '../../src/model/kit.js';
import { plainLine } from '../../src/model/prose.js';

export const slugOf = (name: string) => exerciseId(name.trim().toLowerCase().replaceAll(' ', '-'));

/** Stops the run: a case that cannot be read proves nothing. */
export function fail(what: string): never {
  throw new Error(what);
}

export function oneOf<Word extends string>(words: readonly Word[], word: string | undefined): Word {
  return words.find((one) => one === word) ?? fail(`${word} is none of ${words.join(', ')}`);
}

const THINGS: readonly ThingKind[] = ['bench', 'step', 'chair', 'wall', 'mat', 'box'];
const LOADS: Readonly<Record<string, LoadNeed>> = {
  'one bell': { kind: 'bell', count: 1, unequal: false },
  'one bell or nothing': { kind: 'bell', count: 1, unequal: false },
  'pair of bells': { kind: 'bell', count: 2, unequal: false },
  'pair of unequal bells': { kind: 'bell', count: 2, unequal: true },
  bar: { kind: 'bar' },
  band: { kind: 'band' },
};
const HOLDS: Readonly<Record<string, Facts['holds']>> = {
  total: 'total',
  'per hand': 'per-hand',
  added: 'added',
  assisted: 'assisted',
};

export function readLibrary(): readonly Exercise[] {
  const text = readFileSync(new URL('library.txt', import.meta.url), 'utf8');
  const [, ...paragraphs] = text.trim().split(/\n\n+/);
  const exercises = paragraphs.map(readExercise);
  const known = new Set(exercises.map(({ id }) => id));
  for (const { id, words, facts } of exercises) {
    const named = [...words.easier, ...words.harder].flatMap(({ to }) => (to.kind === 'exercise' ? [to.id] : []));
    for (const other of [...named, ...facts.parts]) if (!known.has(other)) fail(`${id} names ${other}`);
  }
  return exercises.sort((a, b) => (a.id < b.id ? -1 : 1));
}

function readExercise(paragraph: string): Exercise {
  const [name = '', works = '', ...lines] = paragraph.split('\n');
  const said = (word: string) => lines.find((line) => line.startsWith(`${word}:`))?.slice(word.length + 1) ?? '';
  const id = slugOf(name);
  return {
    id,
    formerIds: [],
    name: name.slice(0, 1).toUpperCase() + name.slice(1),
    facts: readFacts(name, works, said('asks'), said('muscles')),
    words: {
      description: [],
      setUp: [],
      pickUp: [],
      putDown: [],
      cues: [{ phase: '', line: plainLine(`Slow and tidy: ${name}`) }],
      breath: [plainLine('Breathe out on the effort')],
      faults: [],
      easier: readLinks(said('easier'), name),
      harder: readLinks(said('harder'), name),
      stopIf: [plainLine('It hurts')],
      partner: [],
    },
    poses: [],
    place: { file: 'library.txt', line: 1, column: 1, length: 1 },
  };
}

function readFacts(name: string, works: string, asks: string, muscles: string): Facts {
  const words = works.split(',').map((word) => word.trim());
  const [way, pattern, sides, ...rest] = words;
  const after = (start: string) =>
    rest.flatMap((word) => (word.startsWith(`${start} `) ? [word.slice(start.length + 1)] : []));
  const share = after('body share')[0];
  const most = after('at most')[0];
  const measure = after('measure')[0];
  const parts = after('parts')[0]?.match(/^(.+) and (.+) (as one|in turn)$/);
  const load = rest.flatMap((word) => LOADS[word] ?? []);
  const kind = oneOf(WAYS, way);
  const each = oneOf(SIDES, sides);
  return {
    pattern: oneOf(PATTERNS, pattern),
    way: kind,
    sides: each,
    kit: {
      load,
      unloaded: load.length === 0 || rest.includes('one bell or nothing'),
      things: THINGS.filter((thing) => rest.includes(thing)),
    },
    room: { ceiling: rest.includes('load overhead') ? 'load overhead' : 'any' },
    holds: rest.flatMap((word) => HOLDS[word] ?? [])[0] ?? (rest.includes('band') ? 'band' : 'total'),
    ...(share === undefined
      ? {}
      : { bodyShare: { share: Math.round(1000 * Number(share)), standing: 'practice', source: 'invented' } }),
    asks: asks.trim() === '' ? [] : asks.split(',').map((ask) => readAsk(name, ask.trim(), each === 'each')),
    signOff: rest.includes('needs a sign-off'),
    muscles: {
      main: listed(muscles.split(';')[0] ?? ''),
      assisting: listed(muscles.split(';')[1] ?? ''),
    },
    tempo: { lower: kind === 'swing' ? 1 : 2, bottom: 0, lift: kind === 'swing' ? 'fast' : 1, top: 0 },
    parts: parts ? [slugOf(parts[1] ?? ''), slugOf(parts[2] ?? '')] : [],
    partsDone: parts?.[3] === 'in turn' ? 'in turn' : 'as one',
    rehearses: after('rehearses').map((one) => oneOf(PATTERNS, one)),
    cools: rest.includes('cools'),
    ...(most === undefined ? {} : { mostReps: Number.parseInt(most, 10) }),
    ...(measure === undefined ? {} : { measure: oneOf(MEASURES, measure) }),
    onTheFloor: rest.includes('picked up from the floor'),
  };
}

const listed = (text: string): readonly string[] =>
  text
    .split(',')
    .map((one) => one.trim())
    .filter((one) => one !== '');

function readAsk(name: string, text: string, oneSided: boolean): Ask {
  const [, of, degree, phase] = /^(.+) (some|much)(?: at (\w+))?$/.exec(text) ?? fail(`${name} asks ${text}`);
  return {
    of: oneOf([...BODY_PARTS, ...QUALITIES], of),
    degree: oneOf(['some', 'much'] as const, degree),
    side: oneSided ? 'working' : 'both',
    phases: phase === undefined ? [] : [phase],
  };
}

function readLinks(text: string, name: string): readonly Version[] {
  if (text.trim() === '') return [];
  return text.split(';').map((link): Version => {
    const [, to, causes] = /^(.+?)(?: for (.+))?$/.exec(link.trim()) ?? fail(`${name}: ${link}`);
    const way = /^"(.+)"$/.exec(to ?? '')?.[1];
    return {
      to: way === undefined ? { kind: 'exercise', id: slugOf(to ?? '') } : { kind: 'way', slug: slugOf(way) },
      say: plainLine(way ?? to ?? ''),
      causes: listed(causes ?? '').map((cause) => oneOf(CAUSES, cause)),
      place: { file: 'library.txt', line: 1, column: 1, length: 1 },
    };
  });
}
