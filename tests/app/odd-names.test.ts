/** Names that lead elsewhere, or that two things would share: told in words, and nothing is read or written there. */
import { cpSync, mkdirSync, renameSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { bytesBelow, chalkleaf, type Ran, smallStudio, workFolder, writeFiles } from './run-chalkleaf.js';

const DAY = '2026-12-28';
const CLIENT = 'clients/ash-venn';
const SQUAT = 'exercises/goblet-squat.md';
const run = (folder: string, ...args: readonly string[]): Ran =>
  chalkleaf([
    ...args,
    ...['--content', join(folder, 'content'), '--today', DAY],
    ...(args[0] === 'receive' ? [] : ['--out', join(folder, 'output'), '--state', join(folder, 'state')]),
  ]);

/** Issued and built once: each case works on a copy. */
const issued = workFolder();
let work: ReturnType<typeof workFolder>;
beforeAll(() => {
  writeFiles(join(issued.path, 'content'), smallStudio());
  for (const args of [['issue', 'ash-venn'], ['build']]) {
    const ran = run(issued.path, ...args);
    expect(ran.code, ran.out + ran.err).toBe(0);
  }
});
afterAll(() => issued.away());
beforeEach(() => {
  work = workFolder();
  cpSync(issued.path, work.path, { recursive: true, verbatimSymlinks: true });
});
afterEach(() => work.away());
const content = (...below: readonly string[]): string => join(work.path, 'content', ...below);

const COMMANDS: readonly (readonly string[])[] = [
  ['why'],
  ['review'],
  ['issue'],
  ['withdraw', '--why', 'too heavy'],
  ['key', 'new'],
  ['key', 'rotate'],
  ['key', 'end'],
  ['build', '--only'],
];
const NAMES = ['../../elsewhere', 'ash-venn/../ash-venn', 'ASH-VENN', '__proto__'] as const;

test.each(NAMES)('a client called %s on the command line is nobody, and nothing is written', (name) => {
  mkdirSync(join(work.path, 'elsewhere'));
  const before = bytesBelow(work.path);
  for (const [command = '', ...more] of COMMANDS) {
    const args =
      command === 'key'
        ? [command, ...more, name]
        : command === 'build'
          ? [command, ...more, name]
          : [command, name, ...more];
    const ran = run(work.path, ...args);
    expect([args, ran.code], ran.out + ran.err).toEqual([args, 1]);
    expect(ran.out).toContain('no-such-client');
    expect(ran.err).not.toMatch(/\bat .*:\d+:\d+/);
  }
  expect(bytesBelow(work.path)).toEqual(before);
});

describe('two that some computers take for one: refused, and what was built stands', () => {
  test.each<readonly [string, () => void, readonly string[]]>([
    [
      'by case',
      () => cpSync(content(SQUAT), content('exercises/Goblet-Squat.md')),
      ['Goblet-Squat.md', 'bad-id', 'id-taken'],
    ],
    [
      'by normal form',
      () => {
        for (const form of ['NFC', 'NFD'])
          cpSync(content(SQUAT), content('exercises', `${'pli\u00e9'.normalize(form)}.md`));
      },
      ['bad-id', 'id-taken'],
    ],
    ['clients, by case', () => cpSync(content(CLIENT), content('clients/Ash-Venn'), { recursive: true }), ['id-taken']],
    [
      'a client and an exercise',
      () => renameSync(content(CLIENT), content('clients/goblet-squat')),
      ['client-named-like-library'],
    ],
    [
      'a client and a word of the site',
      () => renameSync(content(CLIENT), content('clients/previews')),
      ['client-named-like-library'],
    ],
  ])('%s', (_, make, codes) => {
    make();
    const before = bytesBelow(join(work.path, 'output/public'));
    const ran = run(work.path, 'build');
    expect(ran.code, ran.out).toBe(1);
    for (const code of codes) expect(ran.out).toContain(code);
    expect(ran.err).toBe('');
    // Of a client alone: the library is as it was, and nobody's name is new in it.
    const now = bytesBelow(join(work.path, 'output/public'));
    expect(now.filter(([path]) => !before.some(([other]) => other === path))).toEqual([]);
  });
});

describe('a link on the disk is not followed', () => {
  test.each([
    ['a client’s page', `${CLIENT}/client.md`],
    ['a client’s editions', `${CLIENT}/editions`],
    ['one edition', `${CLIENT}/editions/1`],
    ['one edition’s file', `${CLIENT}/editions/1/edition.json`],
    ['a client’s marks', `${CLIENT}/log`],
    ['an exercise', SQUAT],
    ['all programmes', 'programmes'],
  ])('%s', (_, path) => {
    const away = join(work.path, 'away');
    if (path.endsWith('/log')) mkdirSync(away);
    else renameSync(content(path), away);
    symlinkSync(away, content(path));
    const ran = run(work.path, 'build');
    expect(ran.code, ran.out).toBe(1);
    expect(ran.out).toMatch(/link-not-followed|edition-unreadable/);
    expect(ran.err).toBe('');
  });
});

describe('a link on a page leads to pages of the folder alone', () => {
  const outside = 'Kept outside the studio.';
  test.each([
    ['to a client', '[Ash](../clients/ash-venn/client.md)', 'link-to-client'],
    ['out of the folder', '[notes](../../outside.md)', 'link-elsewhere'],
    ['out of it, spelled otherwise', '[notes](..%2f..%2foutside.md)', 'link-elsewhere'],
    ['to a file of the machine', '[notes](/etc/passwd)', 'link-elsewhere'],
    ['to a picture outside', '## Poses\n\n![A bell.](../../outside.png)', 'picture-elsewhere'],
  ])('%s', (_, line, code) => {
    writeFileSync(join(work.path, 'outside.md'), outside);
    writeFiles(content(), [[SQUAT, `${smallStudio().get(SQUAT)}\n${line}\n`]]);
    const ran = run(work.path, 'check');
    expect(ran.code).toBe(1);
    expect(ran.out).toContain(code);
    expect(ran.out).not.toContain(outside);
  });
});

test('marks that name a file elsewhere by their device are refused', () => {
  const log = { schema: 1, bookletId: '0'.repeat(32), device: '../../elsewhere', events: [] };
  writeFileSync(join(work.path, 'log.json'), JSON.stringify(log));
  const before = bytesBelow(content());
  const ran = run(work.path, 'receive', join(work.path, 'log.json'));
  expect(ran.code).toBe(1);
  expect(ran.out).toContain('device');
  expect(bytesBelow(content())).toEqual(before);
  rmSync(join(work.path, 'log.json'));
});
