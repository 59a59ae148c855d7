/** Advice as a coach meets it: told by `check` after what is wrong, counted by `build`, never in the way. */
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { chalkleaf, type Ran, smallStudio, workFolder, writeFiles } from './run-chalkleaf.js';

const SQUAT = 'exercises/goblet-squat.md';
const CLIENT = 'clients/ash-venn/client.md';
const LONG = '- **Up** — Push the floor away and bring the bell with you.';

let work = workFolder();
beforeEach(() => {
  work = workFolder();
  writeFiles(join(work.path, 'content'), smallStudio());
  rewrite(SQUAT, (text) => text.replace(LONG, `${LONG.replace('.', '')} all the way to the top of the room.`));
});
afterEach(() => work.away());

function rewrite(path: string, change: (text: string) => string): void {
  const before = smallStudio().get(path) ?? '';
  expect(change(before)).not.toBe(before);
  writeFiles(join(work.path, 'content'), [[path, change(before)]]);
}

const run = (command: string, ...more: readonly string[]): Ran =>
  chalkleaf([command, '--content', join(work.path, 'content'), '--today', '2026-11-24', ...more]);

test('check tells it in the form of a mistake, and all is well', () => {
  const ran = run('check');
  expect(ran.code).toBe(0);
  expect(ran.out).toMatch(/^exercises\/goblet-squat\.md:\d+:3 {2}advice {2}long-cue {2}This cue has \d+ words/);
  expect(ran.out).toMatch(/\n {2}- \*\*Up\*\* — Push.*\n {4}\^+\n {2}write instead: /);
  expect(ran.out).toContain('Advice: 1 piece.');
});

test('after what is wrong, though its file comes first', () => {
  rewrite(CLIENT, (text) => text.replace('minutes: 30', 'minutes: thirty'));
  rewrite('studio.md', (text) => text.replace('units: kg', 'units: kg\naddress: nowhere'));
  const ran = run('check');
  expect(ran.code).toBe(1);
  const heads = ran.out.match(/^\S+:\d+:\d+ {2}(error|warning|advice)/gm) ?? [];
  expect(heads.map((head) => head.replace(/:\d+:\d+/, ''))).toEqual([
    `${CLIENT}  error`,
    'studio.md  error',
    `${SQUAT}  advice`,
  ]);
});

test('build says only how many, and says nothing of it on the desk; with one line it says nothing at all', () => {
  const ran = run('build');
  expect(ran.code).toBe(0);
  expect(ran.out).not.toContain('long-cue');
  expect(ran.out).toContain('Advice: 1 piece. It holds nothing back; check tells it.');
  expect(JSON.parse(run('build', '--json').out)).toMatchObject({ advice: 1, problems: [], exit: 0 });
  rewrite('studio.md', (text) => text.replace('units: kg', 'units: kg\nadvice off: long-cue'));
  expect(run('build').out).not.toContain('Advice');
  expect(run('check').out).not.toContain('long-cue');
});

test('other programs get it among the problems of check, as a record with its code', () => {
  expect(JSON.parse(run('check', '--json').out)).toMatchObject({
    problems: [{ code: 'long-cue', severity: 'advice', data: { most: 14 }, scope: { kind: 'folder' } }],
    exit: 0,
  });
  expect(run('why', 'ash-venn', '--week', '1').out).not.toContain('long-cue');
  expect(run('issue', 'ash-venn').out).not.toContain('long-cue');
});
