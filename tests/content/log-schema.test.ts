/** The schema file of a log and the reader of logs come to the same verdict, over logs that are made and broken. */
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { Ajv } from 'ajv';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { logOf, readLog } from '../../src/content/read-log.js';
import { runs } from '../deep.js';
import { aTuesday } from '../marks/a-tuesday.js';
import { anyLog } from '../marks/made-logs.js';

const TOP = resolve(import.meta.dirname, '..', '..');
const FILE = join(TOP, 'src', 'content', 'log.schema.json');
// The option that wants every `required` name declared where it is required does not see the parts of an `if`.
const ajv = new Ajv({ strict: true, strictRequired: false, strictTypes: false });
const fits = ajv.compile(JSON.parse(readFileSync(FILE, 'utf8')));
const RUNS = { numRuns: runs(300, 10_000) };

const isRead = (value: unknown): boolean => !('why' in logOf(value));
const copyOf = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

test('a log that is made is read, whole and in order, and fits the schema', () => {
  fc.assert(
    fc.property(anyLog, (log) => {
      const read = readLog(JSON.stringify(log));
      if ('why' in read) throw new Error(read.why);
      expect(fits(copyOf(log))).toBe(true);
      expect([...read.events].sort((a, b) => (a.id < b.id ? -1 : 1))).toEqual(
        copyOf([...log.events].sort((a, b) => (a.id < b.id ? -1 : 1))),
      );
      const { events } = read;
      for (const [index, event] of events.slice(1).entries()) expect(event.seq >= (events[index]?.seq ?? 0)).toBe(true);
    }),
    RUNS,
  );
});

type Path = readonly (string | number)[];

function pathsIn(value: unknown, path: Path = []): readonly Path[] {
  if (typeof value !== 'object' || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, part]) => pathsIn(part, [...path, key]))];
}

/** A value in the place of another; `undefined` takes it away, and a key nobody knows is put beside it. */
const STRAY = [
  undefined,
  null,
  '',
  'x',
  'left',
  'left out',
  'set',
  'both',
  true,
  -1,
  0,
  0.25,
  0.5,
  1.5,
  11,
  501,
  7201,
  10_001,
  1e21,
  '2027-02-29T10:00:00+01:00',
  '2100-02-29T10:00:00+01:00',
  '2027-01-04T24:00:00+01:00',
  '2027-01-04T10:00:00Z',
  '1/2/goblet-squat/both/work/0',
  '1/2/Goblet/both/work/1',
  '5F0C1E52-9D1A-4C6B-8B1E-000000000001',
  '5f0c1e52-9d1a-4c6b-8b1e-000000000001',
  'ä'.repeat(81),
  '👩'.repeat(80),
  'n'.repeat(2001),
  [],
  {},
  [1],
  { id: 'x', grams: 1 },
];

function broken(value: unknown, path: Path, stray: unknown, besides: boolean): unknown {
  const [step, ...rest] = path;
  if (besides && path.length === 0 && typeof value === 'object' && value !== null && !Array.isArray(value)) {
    return { ...value, reps: stray };
  }
  if (step === undefined) return stray;
  if (Array.isArray(value))
    return value.map((part, at) => (String(at) === step ? broken(part, rest, stray, besides) : part));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, part]) => [key, key === step ? broken(part, rest, stray, besides) : part]),
  );
}

describe('schema and reader agree', () => {
  test('on every part of one evening, broken in every way', () => {
    const verdicts = new Set<boolean>();
    for (const path of pathsIn(aTuesday)) {
      for (const stray of STRAY) {
        for (const besides of [false, true]) {
          const value = copyOf({ all: broken(aTuesday, path, stray, besides) });
          const log = (value as { readonly all: unknown }).all;
          const verdict = fits(log);
          verdicts.add(verdict);
          expect(isRead(log), JSON.stringify([path, stray, besides])).toBe(verdict);
        }
      }
    }
    expect([...verdicts].sort()).toEqual([false, true]);
  });

  test('on any log, broken anywhere', () => {
    fc.assert(
      fc.property(anyLog, fc.nat(), fc.constantFrom(...STRAY), fc.boolean(), (log, at, stray, besides) => {
        const paths = pathsIn(log);
        const value = broken(log, paths[at % paths.length] ?? [], stray, besides);
        const whole: unknown = value === undefined ? null : copyOf(value);
        expect(isRead(whole)).toBe(fits(whole));
      }),
      RUNS,
    );
  });

  test('on anything at all', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        expect(isRead(value)).toBe(fits(value));
      }),
    );
  });
});

describe('what is wrong is said, and in which mark', () => {
  const withSet = (more: object): string =>
    JSON.stringify({
      ...aTuesday,
      events: aTuesday.events.map((event, at) => (at === 1 ? { ...event, ...more } : event)),
    });

  test.each([
    ['{', 'it is not JSON'],
    ['[]', /expected object/],
    [withSet({ reps: 501 }), /^event 2 \(set, seq 2\): reps: /],
    [withSet({ seconds: 30 }), 'event 2 (set, seq 2): a set counts one of reps, seconds and metres'],
    [withSet({ done: 'left out' }), 'event 2 (set, seq 2): a set left out has no figures'],
    [withSet({ at: '2027-01-05' }), /^event 2 \(set, seq 2\): at: a local time with its offset is wanted/],
    [withSet({ mood: 'good' }), /^event 2 \(set, seq 2\): .*mood/],
  ])('%#', (text, why) => {
    expect(readLog(text)).toEqual({ why: typeof why === 'string' ? why : expect.stringMatching(why) });
  });

  test('any text gives an answer', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect(readLog(text)).toHaveProperty('why');
      }),
    );
  });
});
