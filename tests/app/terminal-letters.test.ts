/** What a client or a coach has written comes to a terminal as letters: it moves no cursor, sets no colour, turns no line. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { runReview } from '../../src/app/run-review.js';
import { HOSTILE } from '../publish/hostile-strings.js';
import { CLIENT, idOf, logFrom, messageFrom, type ReceiveStudio, receiveStudio } from './receive-studio.js';
import { chalkleaf, workFolder } from './run-chalkleaf.js';

const DAY = '2027-01-12';
// biome-ignore lint/suspicious/noControlCharactersInRegex: a terminal obeys them
const MOVES_A_TERMINAL = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069]/;
/** Turns the line round; and a sign that some terminals take for the beginning of an order. */
const NAME = 'Ash \u202eVenn \u009b31m';

const work = workFolder();
let studio: ReceiveStudio;
const rewrite = (path: string, from: string, to: string): void => {
  const page = join(studio.content, path);
  const text = readFileSync(page, 'utf8');
  expect(text).toContain(from);
  writeFileSync(page, text.replace(from, to));
};

beforeAll(() => {
  studio = receiveStudio(work.path);
  rewrite(`clients/${CLIENT}/client.md`, 'name: Ash Venn', `name: ${NAME}`);
  rewrite('exercises/goblet-squat.md', 'name: Goblet squat', 'name: Goblet \u202esquat');
});
afterAll(() => work.away());

async function review(): Promise<string> {
  let out = '';
  const write = vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    out += String(text);
    return true;
  });
  try {
    await runReview({ content: studio.content, out: '', state: '', today: DAY, json: false, only: CLIENT }, {});
    await runReview({ content: studio.content, out: '', state: '', today: DAY, json: false }, {});
    return out;
  } finally {
    write.mockRestore();
  }
}

test('notes, what was lifted, and names: as marks come in, and in the review', async () => {
  const lengthOf = (text: string): number => Array.from(text).length;
  const notes = HOSTILE.filter((text) => lengthOf(text) <= 2000).map((text) => ({ kind: 'note', text }));
  const sets = HOSTILE.filter((text) => lengthOf(text) <= 80).map((label, at) => ({
    kind: 'set',
    key: `1/1/goblet-squat/both/work/${(at % 3) + 1}`,
    exercise: 'goblet-squat',
    tempo: 'normal',
    done: 'done',
    reps: 9,
    load: { kg: 12, grams: 12000, mode: 'total', pieces: [], label },
    asPlanned: false,
  }));
  expect(Math.min(notes.length, sets.length)).toBeGreaterThan(200);
  const last = [
    { kind: 'reserve', occurrence: 1, row: 'goblet-squat', side: 'both', reps: 2 },
    { kind: 'pain', occurrence: 1, row: 'goblet-squat', report: { where: 'knee', degree: 5 } },
  ];
  const events = [...notes, ...sets, ...last].map((event, at) => ({
    id: idOf(at + 1),
    seq: at + 1,
    edition: 2,
    at: '2027-01-04T18:00:00+00:00',
    ...event,
  }));
  // A note of nothing but what is no letter is refused, whole; the others are filed.
  const asFile = await studio.receiveHere(studio.put('marks.json', logFrom(studio, events)));
  expect(asFile.code, asFile.out).toBe(0);
  const asMessage = await studio.receiveHere(studio.put('marks.txt', messageFrom(studio, events, 'phone-2')));
  expect(asMessage.code, asMessage.out).toBe(0);
  const told = [asFile.out, asMessage.out, await review()];
  for (const out of told) expect(out).not.toMatch(MOVES_A_TERMINAL);
  expect(told.join('')).toContain('Ash \ufffdVenn');
  expect(told.join('')).toContain('struck(1)');
});

test('for a program they are written by their numbers, and read as they were written', () => {
  const ran = chalkleaf(['why', CLIENT, '--json', '--content', studio.content, '--today', DAY]);
  expect([ran.code, ran.out]).toEqual([0, expect.not.stringMatching(MOVES_A_TERMINAL)]);
  expect(ran.out).toContain('Ash \\u202eVenn \\u009b31m');
  expect(JSON.parse(ran.out).why[0].client.name).toBe(NAME);
});

test.each([
  ['check'],
  ['why', CLIENT],
  ['issue', CLIENT],
  ['withdraw', CLIENT, '--why', 'Too \u202eheavy\u009b31m'],
  ['key', 'new', CLIENT],
])('%s: names and what is given on the command line', (...args) => {
  const ran = chalkleaf([...args, '--content', studio.content, '--state', join(work.path, 'state'), '--today', DAY]);
  expect([ran.code, `${ran.out}${ran.err}`]).toEqual([0, expect.not.stringMatching(MOVES_A_TERMINAL)]);
});
