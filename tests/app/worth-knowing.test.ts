/** What `check` and `build` say besides what is wrong: whom it concerns, and what a coach would want to know before handing over. */
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { chalkleaf, type Ran, smallStudio, workFolder, writeFiles } from './run-chalkleaf.js';

const CLIENT = 'clients/ash-venn/client.md';
const PROGRAMME = 'programmes/first-six-weeks.md';
const SQUAT = 'exercises/goblet-squat.md';

let work = workFolder();
beforeEach(() => {
  work = workFolder();
  writeFiles(join(work.path, 'content'), smallStudio());
});
afterEach(() => work.away());

const rewrite = (path: string, change: (text: string) => string): void =>
  writeFiles(join(work.path, 'content'), [[path, change(smallStudio().get(path) ?? '')]]);

const run = (command: string, ...more: readonly string[]): Ran =>
  chalkleaf([command, '--content', join(work.path, 'content'), '--today', '2026-11-24', ...more]);

const squatWithoutBells = (): void =>
  rewrite(CLIENT, (text) => text.replace('bells: 12, 16, 20', 'bells: none').replace(/^\| \[Goblet.*\n/m, ''));

const SQUAT_ONCE =
  'To decide: Goblet squat (A): the goblet squat is left out: the chair squat stands in this session already.';

test('nothing to tell of any exercise: only of the block as a whole, and one of each is one', () => {
  const ran = run('check');
  const [head, ...told] = ran.out.trimEnd().split('\n');
  expect(head).toBe('Worth knowing');
  expect(told.splice(-2)).toEqual(['', 'Checked: 2 exercises, 1 programme, 1 client.']);
  // One row cannot train everything, and so short a file has not said everything.
  expect(told[0]).toBe('  ash-venn');
  const lines = told.slice(1);
  expect(lines).toContainEqual(
    expect.stringMatching(/^ {4}Worth a look: Trained on fewer than 2 days of the week, .*: legs, hips, back, /),
  );
  for (const line of lines) expect(line).toMatch(/^ {4}(To decide|Worth a look|On the desk): /);
  for (const line of lines) expect(line).not.toMatch(/\(A\)|session/);
  expect(ran.code).toBe(0);
});

test('an exercise that would stand in for another, and is done in its session already', () => {
  squatWithoutBells();
  for (const command of ['check', 'build']) {
    const ran = run(command);
    expect(ran.code).toBe(0);
    expect(ran.out).toMatch(/^Worth knowing\n/);
    expect(ran.out).toContain(SQUAT_ONCE);
    expect(ran.out).toMatch(/\n\n(Checked|Built): /);
  }
  const told: unknown = JSON.parse(run('check', '--json').out);
  expect(told).toMatchObject({
    findings: expect.arrayContaining([
      expect.objectContaining({
        client: 'ash-venn',
        session: 'A',
        rule: 'refuge-once',
        asks: 'decide',
        weeks: [1, 2, 3, 4, 5, 6],
      }),
    ]),
  });
});

test('an exercise not passed is not quietly replaced', () => {
  rewrite(SQUAT, (text) => text.replace('sign-off: no', 'sign-off: yes'));
  expect(run('check').out).toContain(SQUAT_ONCE);
});

test('a client’s problem that stands in a programme names the client, and the last line whom it would withhold', () => {
  rewrite('exercises/chair-squat.md', (text) => text.replace('needs: chair', 'needs: bench'));
  const ran = run('check');
  expect(ran.code).toBe(1);
  expect(ran.out).toMatch(/^programmes\/first-six-weeks\.md:\d+:\d+ {2}error {2}\S+ {2}For ash-venn: /m);
  expect(ran.out).toMatch(/\nWould be withheld: ash-venn\.\n$/);
});

test('a link that leads nowhere is told once, and never put into the coach’s mouth', () => {
  rewrite(PROGRAMME, (text) => text.replace('goblet-squat.md', 'goblet-sqat.md'));
  const ran = run('check');
  expect(ran.out.match(/ {2}error {2}/g)).toHaveLength(1);
  expect(ran.out).not.toContain('write instead: goblet-sqat');
});

test('facts of the client’s file are pointed at where they stand', () => {
  rewrite(CLIENT, (text) => text.replace('minutes: 30', 'minutes: 10').replace('1990', '2016'));
  const ran = run('check');
  expect(ran.out).toMatch(/client\.md:7:13 {2}error {2}under-age /);
  expect(ran.out).toMatch(
    /client\.md:6:10 {2}error {2}session-too-long .*still takes \d+ minutes after every cut you allow; 10 are free\./,
  );
});

test('a test of tomorrow withholds, a block that is over is said once', () => {
  rewrite(CLIENT, (text) => text.replace('2026-11-16', '2026-11-25'));
  expect(run('check').out).toMatch(
    /date-in-future {2}This test is dated 25 November 2026, and today is 24 November 2026\./,
  );
  rewrite(CLIENT, (text) => text.replace('2027-01-04', '2026-01-05').replace('2026-11-02', '2026-01-02'));
  const ran = run('check');
  expect(ran.code).toBe(0);
  expect(ran.out.match(/ {2}warning {2}/g)).toHaveLength(1);
  expect(ran.out).toMatch(/client\.md:3:9 {2}warning {2}block-ended {2}This block ended on 15 February 2026\./);
});

test('a week that is no number is refused in a sentence', () => {
  const ran = run('why', 'ash-venn', '--week', 'four');
  expect(ran.code).toBe(2);
  expect(ran.err).toBe('error: --week wants a week by its number, as 4; “four” is not one\n');
});
