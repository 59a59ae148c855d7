/**
 * The code on the paper of a client who was issued a sealed booklet, as the program builds it and as an outside reader of
 * codes takes it from the printed page: the booklet’s cover opens the booklet, and what hangs on a wall does not.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { chalkleaf, smallStudio, workFolder, writeFiles } from '../app/run-chalkleaf.js';

const ADDRESS = 'https://slate-yard.example/gym/';
const work = workFolder();
const pictures = mkdtempSync(join(tmpdir(), 'printed-code-'));
const content = join(work.path, 'content');
const home = (...below: readonly string[]): string => join(work.path, 'output/private/clients/ash-venn', ...below);

let folder = '';
/** The secret of the link, as the state keeps it. */
let secret = '';

beforeAll(() => {
  const pages = [...smallStudio()].map(([path, text]): [string, string] => [
    path,
    path === 'studio.md' ? text.replace(/^coach:/m, `address: ${ADDRESS}\ncoach:`) : text,
  ]);
  writeFiles(content, pages);
  for (const command of ['issue', 'build']) {
    const ran = chalkleaf([
      command,
      ...(command === 'issue' ? ['ash-venn'] : []),
      '--content',
      content,
      '--today',
      '2026-11-24',
    ]);
    expect(ran.code, `${ran.out}${ran.err}`).toBe(0);
  }
  folder = readdirSync(join(work.path, 'output/public')).find((name) => /^[0-9a-f]{32}$/.test(name)) ?? '';
  expect(folder).not.toBe('');
  const kept = JSON.parse(readFileSync(join(work.path, 'state/keys', `${folder}.json`), 'utf8'));
  secret = String(kept.link);
}, 500_000);
afterAll(() => {
  work.away();
  rmSync(pictures, { recursive: true, force: true });
});

/** Every page of a file as printed at 150 dots to the inch, in order. */
function printed(name: string): readonly string[] {
  const stem = name.replace('.pdf', '');
  execFileSync('pdftoppm', ['-gray', '-r', '150', home(name), join(pictures, stem)]);
  return readdirSync(pictures)
    .filter((file) => file.startsWith(`${stem}-`))
    .sort()
    .map((file) => join(pictures, file));
}

/** Codes of these pages, in order. */
function codesOn(pages: readonly string[]): readonly string[] {
  const read = spawnSync('zbarimg', ['-q', '--raw', ...pages], { encoding: 'utf8' });
  // 4: no code was found (zbarimg(1), EXIT STATUS).
  expect([0, 4], read.stderr).toContain(read.status);
  return read.stdout.split('\n').filter((line) => line !== '');
}

test.each(['booklet-a5.pdf', 'fold-a4.pdf'])(
  'the code on the cover of %s is the address with the key, and no other page has one',
  (name) => {
    const [cover = '', ...others] = printed(name);
    expect(others.length).toBeGreaterThan(4);
    expect(secret).toMatch(/^[\w-]{43}$/);
    expect(codesOn([cover])).toEqual([`${ADDRESS}${folder}/#open=${secret}`]);
    expect(codesOn(others)).toEqual([]);
  },
  120_000,
);

test('the code on each week’s sheet is the address without the key, nor does the sheet say it elsewhere', () => {
  const pages = printed('weeks-a4.pdf');
  expect(pages.length).toBeGreaterThan(1);
  expect(codesOn(pages)).toEqual(pages.map(() => `${ADDRESS}${folder}/`));
  expect(execFileSync('pdftotext', [home('weeks-a4.pdf'), '-'], { encoding: 'utf8' })).not.toContain(secret);
}, 300_000);
