/** A page written anew: whole or not at all, never over one that changed, with the rights it had. */
import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { writePage } from '../../src/app/write-page.js';

const PATH = 'clients/ida-fell/client.md';
let folder = '';
let page = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'page-'));
  page = join(folder, PATH);
  mkdirSync(join(page, '..'), { recursive: true });
  writeFileSync(page, '\ufeffold\r\n');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const edited = { path: PATH, before: '\ufeffold\r\n', after: '\ufeffnew\r\n' };
const alone = (): readonly string[] => readdirSync(join(page, '..'));

describe('a page', () => {
  test.each([0o644, 0o600, 0o664, 0o755])('keeps its bytes and its rights: %o', async (mode) => {
    chmodSync(page, mode);
    expect(await writePage(folder, edited)).toBeUndefined();
    expect(readFileSync(page, 'utf8')).toBe(edited.after);
    expect(statSync(page).mode & 0o7777).toBe(mode);
    expect(alone()).toEqual(['client.md']);
  });

  test('with nothing to write is not touched', async () => {
    const then = statSync(page, { bigint: true });
    expect(await writePage(folder, { ...edited, after: edited.before })).toBeUndefined();
    expect(statSync(page, { bigint: true })).toMatchObject({ ino: then.ino, mtimeNs: then.mtimeNs });
  });

  test.each([
    ['by one byte', () => writeFileSync(page, '\ufeffold\n')],
    ['by its mark alone', () => writeFileSync(page, 'old\r\n')],
    ['gone', () => rmSync(page)],
    [
      'a link now',
      () => {
        writeFileSync(join(folder, 'elsewhere.md'), '\ufeffold\r\n');
        rmSync(page);
        symlinkSync(join(folder, 'elsewhere.md'), page);
      },
    ],
  ] as const)('changed meanwhile is let be: %s', async (_, change) => {
    change();
    const there = alone();
    expect(await writePage(folder, edited)).toMatchObject({ code: 'page-changed', data: { path: PATH } });
    expect(alone()).toEqual(there);
    if (there.length > 0) expect(readFileSync(page, 'utf8')).not.toBe(edited.after);
  });

  test('is not written where another writing is under way', async () => {
    const other = `.client.md.new-${process.pid}`;
    writeFileSync(join(page, '..', other), 'half');
    expect(await writePage(folder, edited)).toMatchObject({ code: 'page-not-writable' });
    expect(readFileSync(page, 'utf8')).toBe(edited.before);
    expect(alone()).toContain(other);
  });
});
