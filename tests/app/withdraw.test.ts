/** An edition that nobody is to train from any more: written beside it once, and drawn as one page without a set. */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { readPdf } from '../print/read-pdf.js';
import { CLIENT, type EditionStudio, editionStudio, wordsOf } from './edition-studio.js';
import { bytesBelow, TOP } from './run-chalkleaf.js';

/** Issued once by the program: each case works on a copy. */
let issued: EditionStudio;
beforeAll(() => {
  issued = editionStudio();
  expect(issued.run('2026-12-28', 'issue', 'ash-venn').code).toBe(0);
});
afterAll(() => issued.away());

let studio: EditionStudio;
beforeEach(() => {
  studio = editionStudio(issued);
});
afterEach(() => studio.away());

const WHY = 'a new pain at night';
const withdraw = (...more: string[]) => studio.run('2027-01-06', 'withdraw', 'ash-venn', ...more, '--why', WHY);
const record = (n: number) => JSON.parse(readFileSync(studio.home('editions', String(n), 'withdrawn.json'), 'utf8'));
const SETS = /\d kg|× ?\d|\d reps/;

test('the latest, with the day and why; what was frozen is not touched', () => {
  const frozen = bytesBelow(studio.home('editions/1'));
  const ran = withdraw();
  expect([ran.code, ran.out]).toEqual([0, expect.stringContaining('Withdrawn: edition 1 for Ash Venn, on 2027-01-06')]);
  expect(record(1)).toEqual({ schema: 1, date: '2027-01-06', why: WHY });
  expect(bytesBelow(studio.home('editions/1')).filter(([path]) => path !== 'withdrawn.json')).toEqual(frozen);
});

test('build then draws one page that says so, on the phone and on paper; the draft stands beside it', async () => {
  withdraw();
  const ran = studio.run('2027-01-06', 'build');
  expect(ran.code).toBe(0);
  expect(ran.out).toContain('edition 1 is withdrawn, and shows no sets any more.');
  for (const path of ['booklet.html', 'booklet/payload.html']) {
    const words = wordsOf(studio.out(path));
    expect(words).toContain('This booklet was withdrawn on 6 January 2027. Do not train from it');
    expect(words).not.toMatch(SETS);
    const page = readFileSync(studio.out(path), 'utf8');
    // Neither in what is read nor in the data that goes with it, and the why is the coach's own.
    expect(page).not.toContain('/work/');
    expect(page).not.toContain(WHY);
  }
  expect(existsSync(studio.out('draft.html'))).toBe(true);
  expect(wordsOf(studio.out('draft.html'))).toMatch(SETS);
  const paper = await paperOf(studio.out('booklet-a5.pdf'));
  expect(paper).toContain('Do not train from it');
  expect(paper).not.toMatch(SETS);
  expect(paper).not.toContain(WHY);
  expect(studio.desk('clients/ash-venn.html')).toContain(`Edition 1 was withdrawn on 6 January 2027: ${WHY}`);
});

test('a withdrawn edition holds no more: the next is issued though nothing has changed, and is the one drawn', () => {
  withdraw();
  expect(studio.run('2027-01-06', 'issue', 'ash-venn').out).toContain('Issued: edition 2');
  expect(studio.run('2027-01-06', 'build').code).toBe(0);
  const words = wordsOf(studio.out('booklet.html'));
  expect(words).toContain('Edition 2, 6 January 2027');
  expect(words).not.toContain('withdrawn');
  expect(words).toMatch(SETS);
});

test('an older one by its number leaves the latest as it is', () => {
  studio.rewrite(CLIENT, '12 kg | 10 | 3', '16 kg | 14 | 3');
  studio.run('2026-12-29', 'issue', 'ash-venn');
  expect(withdraw('1').out).toContain('Edition 2, which took its place, is not withdrawn.');
  studio.run('2027-01-06', 'build');
  expect(wordsOf(studio.out('booklet.html'))).not.toContain('withdrawn');
});

test('twice is once: the first day and the first words stand', () => {
  withdraw();
  const again = studio.run('2027-01-09', 'withdraw', 'ash-venn', '--why', 'another reason');
  expect([again.code, again.out]).toEqual([0, expect.stringContaining('was withdrawn on 2027-01-06, and stays so')]);
  expect(record(1).why).toBe(WHY);
});

test('it is drawn even for a client whose new plan is withheld, or whose page cannot be read', () => {
  studio.rewrite(CLIENT, 'symptoms: no', 'symptoms: perhaps');
  expect(withdraw().out).toContain('Withdrawn: edition 1');
  expect(studio.run('2027-01-06', 'build').code).toBe(1);
  expect(existsSync(studio.out('withheld.txt'))).toBe(true);
  expect(wordsOf(studio.out('booklet.html'))).toContain('This booklet was withdrawn');
});

test.each([
  ['an edition that is not there', ['ash-venn', '7', '--why', 'x'], 1, 'has no edition 7'],
  ['a client that is not there', ['ash-ven', '--why', 'x'], 1, 'There is no client'],
  ['no why', ['ash-venn'], 2, '--why'],
  ['an empty why', ['ash-venn', '--why', '  '], 2, '--why wants a few words'],
  ['no number', ['ash-venn', 'two', '--why', 'x'], 2, 'an edition goes by its number'],
  ['no client', ['--why', 'x'], 2, 'client'],
])('%s: refused, and nothing is written', (_, args, code, says) => {
  const before = bytesBelow(studio.home());
  const ran = studio.run('2027-01-06', 'withdraw', ...args);
  expect([ran.code, `${ran.out}${ran.err}`]).toEqual([code, expect.stringContaining(says)]);
  expect(bytesBelow(studio.home())).toEqual(before);
});

test('nothing was issued: said, with what to do', () => {
  const other = editionStudio();
  const ran = other.run('2027-01-06', 'withdraw', 'ash-venn', '--why', 'x');
  expect([ran.code, ran.out]).toEqual([1, expect.stringContaining('Nothing was issued to ‘ash-venn’')]);
  other.away();
});

test.each(['', '{"schema":2,"date":"2027-01-06","why":""}'])(
  'a record that is not as it was written withholds the client: %s',
  (text) => {
    writeFileSync(studio.home('editions/1/withdrawn.json'), text);
    const ran = studio.run('2027-01-06', 'build');
    expect([ran.code, ran.out]).toEqual([1, expect.stringContaining('edition-unreadable')]);
    expect(existsSync(studio.out('booklet.html'))).toBe(false);
    expect(withdraw().code).toBe(1);
  },
);

async function paperOf(path: string): Promise<string> {
  const { pages } = await readPdf(new Uint8Array(readFileSync(path)));
  return pages.flatMap(({ tags }) => tags.map(({ text }) => text)).join(' ');
}

test('a disk that is full leaves no half of a withdrawal: said again once there is room, it is written', () => {
  // A shell may bound the size of a file it lets a program write: here nothing may be written at all.
  const words = ['withdraw', 'ash-venn', '--why', WHY, '--today', '2027-01-06', '--content', studio.home('../..')];
  const program = join(TOP, 'dist/src/app/main.js');
  const done = spawnSync(
    'bash',
    ['-c', `trap '' XFSZ; ulimit -f 0; "$@"`, 'bash', process.execPath, program, ...words],
    {
      encoding: 'utf8',
    },
  );
  expect([done.status, done.stdout]).toEqual([3, expect.stringContaining('edition-not-writable')]);
  expect(existsSync(studio.home('editions/1/withdrawn.json'))).toBe(false);
  expect(withdraw().code).toBe(0);
});
