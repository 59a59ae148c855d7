/** Hostile strings in every field a coach or a log can carry: each is read as text or told with file and line. */
import { describe, expect, test } from 'vitest';
import { readLog } from '../../src/content/read-log.js';
import { sayProblemReport } from '../../src/words/show-problem.js';
import { runs } from '../deep.js';
import { HOSTILE } from './hostile-strings.js';
import { fieldsOf, hostPages, put, readPages } from './hostile-studio.js';

const pages = hostPages();
const fields = fieldsOf(pages);
/** So many strings in each field; over all fields every string comes many times. */
const IN_EACH = runs(5, 12);

// biome-ignore lint/suspicious/noControlCharactersInRegex: a terminal obeys them
const MOVES_A_TERMINAL = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/;

test('there are some hundreds of strings, and fields of every kind', () => {
  expect(HOSTILE.length).toBeGreaterThan(250);
  expect(fields.length).toBeGreaterThan(90);
  expect(readPages(pages).problems.filter(({ severity }) => severity !== 'advice')).toEqual([]);
});

test('in any field: no fault of the program’s own, and what is wrong is told with file and line', () => {
  const used = new Set<string>();
  let told = 0;
  let taken = 0;
  fields.forEach((field, at) => {
    for (let turn = 0; turn < IN_EACH; turn += 1) {
      const hostile = HOSTILE[(at * IN_EACH + turn) % HOSTILE.length] ?? '';
      used.add(hostile);
      const changed = put(pages, field, hostile, turn % 2 === 0);
      const { problems } = readPages(changed);
      const where = `${field.path}:${field.line + 1} ${JSON.stringify(hostile.slice(0, 60))}`;
      const wrong = problems.filter(({ severity }) => severity !== 'advice');
      for (const { place } of wrong) {
        expect(changed.has(place?.file ?? ''), where).toBe(true);
        expect(place?.line, where).toBeGreaterThan(0);
      }
      const report = sayProblemReport(problems, (file) => changed.get(file));
      expect(report, where).not.toMatch(MOVES_A_TERMINAL);
      if (wrong.length > 0) told += 1;
      else taken += 1;
    }
  });
  expect(used.size).toBe(HOSTILE.length);
  expect(told).toBeGreaterThan(100);
  expect(taken).toBeGreaterThan(100);
});

describe('in a log', () => {
  const log = {
    schema: 1,
    bookletId: '0f3a77c1d2b94e5fa6617c0b88d41e92',
    device: '7c1d2b94-e5fa-4661-97c0-b88d41e920f3',
    events: [
      {
        id: '1b4e28ba-2fa1-41d2-883f-0016d3cca427',
        seq: 1,
        edition: 1,
        at: '2027-01-04T18:00:00+01:00',
        kind: 'note',
        text: 'x',
      },
      {
        id: '1b4e28ba-2fa1-41d2-883f-0016d3cca428',
        seq: 2,
        edition: 1,
        at: '2027-01-04T18:01:00+01:00',
        kind: 'opened',
        occurrence: 1,
        today: 'as usual',
      },
      {
        id: '1b4e28ba-2fa1-41d2-883f-0016d3cca429',
        seq: 3,
        edition: 1,
        at: '2027-01-04T18:02:00+01:00',
        kind: 'set',
        key: '1/1/a/both/work/1',
        exercise: 'goblet-squat',
        tempo: 'normal',
        done: 'done',
        reps: 8,
        asPlanned: true,
      },
    ],
  };
  const paths: readonly (readonly (string | number)[])[] = [
    ['schema'],
    ['bookletId'],
    ['device'],
    ['events'],
    ...log.events.flatMap((event, index) => Object.keys(event).map((key) => ['events', index, key])),
  ];

  function withValue(path: readonly (string | number)[], value: string): string {
    const copy: Record<string, unknown> = structuredClone(log);
    const last = path.at(-1) ?? '';
    let at: unknown = copy;
    for (const step of path.slice(0, -1)) at = Reflect.get(Object(at), step);
    Reflect.set(Object(at), last, value);
    return JSON.stringify(copy);
  }

  test('it is read whole, so that the rest means something', () => {
    expect(readLog(JSON.stringify(log))).toMatchObject({ schema: 1 });
  });

  test.each(paths.map((path) => [path.join('/'), path] as const))('%s: read, or refused in words', (_, path) => {
    for (const hostile of HOSTILE) {
      const read = readLog(withValue(path, hostile));
      if ('why' in read) expect(read.why).not.toMatch(MOVES_A_TERMINAL);
      else expect(read.events.length).toBeLessThanOrEqual(3);
    }
  });

  test('a log that names what every object has is no way in', () => {
    const read = readLog(
      `{"__proto__":{"polluted":true},"constructor":{"prototype":{"polluted":true}},${JSON.stringify(log).slice(1)}`,
    );
    expect(Reflect.get({}, 'polluted')).toBeUndefined();
    expect('why' in read || !('polluted' in read)).toBe(true);
  });
});
