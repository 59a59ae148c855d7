/** A whole folder: what it comes to, whose fault a problem is, and that one mistake is told once. */
import { describe, expect, test } from 'vitest';
import { FLOOR_ALONE } from '../../src/content/check-programmes.js';
import type { FolderFile } from '../../src/content/read-folder.js';
import { FLOOR_ALONE as engineFloor } from '../../src/engine/rules/floor-alone.js';
import { plainText } from '../../src/model/prose.js';
import { baseFiles, readWith } from './error-folders.js';

const base = baseFiles();
const CLIENT = 'clients/ida-fell/client.md';
const SQUAT = 'exercises/goblet-squat.md';
const CHAIR = 'exercises/chair-squat.md';
const PROGRAMME = 'programmes/one-day.md';

function changed(...changes: readonly (readonly [path: string, change: (text: string) => string])[]): FolderFile[] {
  return base.map((file) => {
    const change = changes.find(([path]) => path === file.path)?.[1];
    if (!change) return file;
    return { path: file.path, bytes: new TextEncoder().encode(change(new TextDecoder().decode(file.bytes))) };
  });
}
const codes = (files: readonly FolderFile[]) =>
  readWith(files).problems.map(({ code, place }) => `${place?.file}:${place?.line} ${code}`);

describe('what a folder comes to', () => {
  const { library, clients } = readWith(base).value;
  test('an exercise', () => {
    const squat = library.exercises.find(({ id }) => id === 'goblet-squat');
    expect(squat?.facts).toMatchObject({
      kit: { load: [{ kind: 'bell', count: 1, unequal: false }], unloaded: false, things: [] },
      asks: [{ of: 'knee', degree: 'some', side: 'both', phases: ['bottom'] }],
      tempo: { lower: 2, bottom: 0, lift: 1, top: 0 },
      parts: [],
      partsDone: 'as one',
      rehearses: [],
      cools: false,
      onTheFloor: true,
    });
    expect(squat?.words.cues.map(({ phase, line }) => `${phase}: ${plainText(line)}`)[1]).toBe(
      'Bottom: Elbows past the knees.',
    );
    expect(squat?.words.faults.map(({ see, say }) => [plainText(see), plainText(say)])).toEqual([
      ['Heels lift', 'Heels in wet sand.'],
    ]);
    expect(squat?.words.easier).toMatchObject([
      { to: { kind: 'exercise', id: 'chair-squat' }, causes: ['load', 'knee'], say: [{ link: CHAIR }] },
    ]);
    expect(library.exercises.find(({ id }) => id === 'chair-squat')?.words.easier).toMatchObject([
      { to: { kind: 'way', slug: 'both-hands-on-your-thighs' }, causes: ['load'] },
    ]);
  });
  test('a programme and a client', () => {
    expect(library.programmes[0]).toMatchObject({
      curve: [30, 30, 20, 20, 20, 40].map((reserve) => ({ reserve, share: 1000, easy: false })),
      sessions: [
        {
          id: 'A',
          name: 'Squat',
          blocks: [{ kind: 'straight', rows: [{ id: 'goblet-squat', restSeconds: 90, trials: true }] }],
        },
      ],
    });
    expect(clients[0]).toMatchObject({
      unit: 'kg',
      language: 'en-GB',
      days: [1],
      tests: [{ reps: 10, reserve: 20, side: 'both' }],
    });
    expect(clients[0]?.kit.map(({ id }) => id)).toEqual(['bell-8', 'bell-12', 'bell-16', 'chair']);
  });
});

describe('whose fault it is', () => {
  test('a client’s mistake is that client’s, and the client is left out', () => {
    const { value, problems } = readWith(changed([CLIENT, (text) => text.replace('minutes: 30', 'minutes: lots')]));
    expect(problems.map(({ scope }) => scope)).toEqual([{ kind: 'client', client: 'ida-fell' }]);
    expect(value.clients).toEqual([]);
    expect(value.library.exercises.length).toBe(2);
  });
  test('any other is the folder’s', () => {
    const { problems } = readWith(changed([SQUAT, (text) => text.replace('way: strength', 'way: strenth')]));
    expect(problems.map(({ scope }) => scope)).toEqual([{ kind: 'folder' }]);
  });
});

describe('one mistake is told once, and hides no other', () => {
  test('links to an exercise that cannot be read lead somewhere all the same', () => {
    expect(codes(changed([SQUAT, () => '---\nname: [\n---\n']))).toEqual([`${SQUAT}:2 front-matter-unreadable`]);
    expect(codes(changed([SQUAT, () => 'no front matter']))).toEqual([`${SQUAT}:1 no-front-matter`]);
    expect(codes(changed([SQUAT, () => '']))).toEqual([`${SQUAT}:1 no-front-matter`]);
  });
  test('a programme that cannot be read is still the client’s programme', () => {
    expect(codes(changed([PROGRAMME, (text) => text.replace('public: yes', 'public: perhaps')]))).toEqual([
      `${PROGRAMME}:4 not-one-of`,
    ]);
  });
  test('mistakes in the front matter and in the body, in several files, in order of place', () => {
    const files = changed(
      [SQUAT, (text) => text.replace('way: strength', 'way: strenth').replace('## Breath', '## Breth')],
      [PROGRAMME, (text) => text.replace('3 × 6–10', '3 × 10–6').replace('90 s', 'long')],
      [CLIENT, (text) => text.replace('2027-01-04', '2027-02-30').replace('12 kg', '12 stone')],
    );
    expect(codes(files)).toEqual([
      `${CLIENT}:3 no-such-date`,
      `${CLIENT}:19 not-a-mass`,
      `${SQUAT}:4 not-one-of`,
      `${SQUAT}:28 unknown-heading`,
      `${PROGRAMME}:15 range-backwards`,
      `${PROGRAMME}:15 not-a-time`,
    ]);
  });
  test('a row that cannot be read does not make its name unknown', () => {
    const files = changed([
      PROGRAMME,
      (text) => text.replace('3 × 6–10', 'lots').replace('\n---\n\n##', '\nnever cut: goblet-squat\n---\n\n##'),
    ]);
    expect(codes(files)).toEqual([`${PROGRAMME}:16 dose-unreadable`]);
  });
});

describe('read as meant', () => {
  const mine = (change: (text: string) => string) => readWith(changed([CLIENT, change]));
  test.each<[string, (text: string) => string]>([
    ['Windows line ends', (text) => text.replaceAll('\n', '\r\n')],
    ['old line ends', (text) => text.replaceAll('\n', '\r')],
    ['a byte order mark', (text) => `\uFEFF${text}`],
    ['spaces at the ends of lines', (text) => text.replaceAll('\n', '  \n')],
    ['a blank line first', (text) => `\n\n${text}`],
    ['values in quotation marks', (text) => text.replace('mon', '"mon"').replace('30', "'30'")],
    ['lists as lists', (text) => text.replace('8, 12, 16', '[8, 12, 16]').replace('mon', '\n  - mon')],
    ['a tab before a value', (text) => text.replace('minutes: 30', 'minutes:\t30')],
    ['remarks', (text) => text.replace('minutes: 30', 'minutes: 30 # at the most')],
    [
      'columns in another order',
      (text) => text.replace('| Reps | Reserve |', '| Reserve | Reps |').replace('| 10 | 2 |', '| 2 | 10 |'),
    ],
  ])('%s', (_, change) => {
    const { value, problems } = mine(change);
    expect(problems).toEqual([]);
    const plain = (client: unknown) =>
      JSON.stringify(client, (key, inner) => (/^places?$/.test(key) ? undefined : inner));
    expect(plain(value.clients)).toBe(plain(readWith(base).value.clients));
  });

  test('phases with the names of a program’s own are phases like others', () => {
    const files = changed([SQUAT, (text) => text.replace('some, bottom', 'some, constructor')]);
    expect(codes(files)).toEqual([`${SQUAT}:9 unknown-phase`]);
  });

  test('facts that are not there need no rule', () => {
    const { value, problems } = mine((text) => text.replace('kit:', 'medicines: none\npregnancy: no\nkit:'));
    expect(problems).toEqual([]);
    expect(value.clients[0]?.unhandled).toEqual([]);
  });

  test('keys that programs have of their own are keys like others', () => {
    const odd = ['__proto__', 'constructor', 'toString', 'hasOwnProperty'];
    const { problems } = mine((text) => text.replace('kit:', `${odd.map((key) => `${key}: x`).join('\n')}\nkit:`));
    expect(problems.map(({ code }) => code)).toEqual(odd.map(() => 'unknown-key'));
  });
});

test('README, GUIDE and ERRORS are for people', () => {
  const page = (path: string): FolderFile => ({ path, bytes: new TextEncoder().encode('words') });
  expect(codes([...base, page('README.md'), page('exercises/README.md'), page('GUIDE.md'), page('ERRORS.md')])).toEqual(
    [],
  );
});

test('an empty folder has no studio', () => {
  expect(readWith([]).problems.map(({ code }) => code)).toEqual(['no-studio']);
});

test('a reserve is held against the floor of the engine, or the coach’s own', () => {
  expect(FLOOR_ALONE).toEqual({ rule: engineFloor.id, tenths: engineFloor.value });
  const low = changed([
    PROGRAMME,
    (text) =>
      text
        .replace('3, 3, 2, 2, 2, 4', '3, 3, 1, 2, 2, 4')
        .replace('| Rest |', '| Rest | Effort |')
        .replace('| --- |\n', '| --- | --- |\n')
        .replace('90 s |', '90 s | reserve 0 |'),
  ]);
  const told = (files: readonly FolderFile[]) =>
    readWith(files).problems.map(({ code, severity }) => `${severity} ${code}`);
  expect(told(low)).toEqual(['warning reserve-below-floor', 'warning reserve-below-floor']);
  const rules = '| Rule | Value | Reason |\n| --- | --- | --- |\n| floor-alone | 10 | seen every week |\n';
  const own: FolderFile = { path: 'rules.md', bytes: new TextEncoder().encode(rules) };
  expect(told([...low, own])).toEqual(['warning reserve-below-floor']);
});
