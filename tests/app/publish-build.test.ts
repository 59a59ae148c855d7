/** Whole at once, or not at all: the output folder under builds that succeed, repeat, fail and are killed. */
import { createHash } from 'node:crypto';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  rmSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { abandonStage, openStage, publishStage, type Stage, writeStaged } from '../../src/app/publish-build.js';

let top = '';
let out = '';
let content = '';
beforeEach(() => {
  top = mkdtempSync(join(tmpdir(), 'chalkleaf-publish-'));
  out = join(top, 'output');
  content = join(top, 'content');
  mkdirSync(content);
});
afterEach(() => rmSync(top, { recursive: true, force: true }));

async function stage(): Promise<Stage> {
  const opened = await openStage(out, content);
  if ('code' in opened) throw new Error(opened.code);
  return opened;
}

async function build(text: string): Promise<unknown> {
  const opened = await stage();
  await writeStaged(opened, 'public/index.html', text);
  await writeStaged(opened, 'private/clients/ann/plan.json', '{}');
  return publishStage(opened);
}

/** Every path below the output with its bytes. */
function snapshot(folder = out, below = ''): string {
  return readdirSync(join(folder, below), { withFileTypes: true })
    .flatMap((entry) => {
      const path = join(below, entry.name);
      if (entry.isSymbolicLink()) return `${path} -> ${readlinkSync(join(folder, path))}`;
      if (entry.isDirectory()) return snapshot(folder, path);
      return `${path} ${createHash('sha256')
        .update(readFileSync(join(folder, path)))
        .digest('hex')}`;
    })
    .sort()
    .join('\n');
}

describe('a build is put in place whole', () => {
  test('public and private are fixed links into the one current build', async () => {
    expect(await build('one')).toEqual({ changed: true });
    expect(readFileSync(join(out, 'public/index.html'), 'utf8')).toBe('one');
    expect(readlinkSync(join(out, 'public'))).toBe('.builds/current/public');
    const first = readlinkSync(join(out, '.builds/current'));
    expect(await build('two')).toEqual({ changed: true });
    expect(readFileSync(join(out, 'public/index.html'), 'utf8')).toBe('two');
    expect(readdirSync(join(out, '.builds')).sort()).toEqual(
      [readlinkSync(join(out, '.builds/current')), 'current'].sort(),
    );
    expect(readlinkSync(join(out, '.builds/current'))).not.toBe(first);
  });

  test('the private half is for its owner alone', async () => {
    await build('one');
    expect(statSync(join(out, 'private/')).mode & 0o077).toBe(0);
  });

  test('the same bytes change nothing', async () => {
    await build('one');
    const before = snapshot();
    expect(await build('one')).toEqual({ changed: false });
    expect(snapshot()).toBe(before);
  });

  test('what was done to it by hand is undone by the same build', async () => {
    await build('one');
    const before = snapshot();
    const page = join(out, 'public/index.html');
    for (const spoil of [
      () => writeFileSync(page, 'another'),
      () => {
        writeFileSync(page, 'eno');
        // A file system counts in some milliseconds.
        utimesSync(page, new Date(), new Date(Date.now() + 1000));
      },
      () => writeFileSync(join(out, 'public/letter.txt'), 'mine'),
      () => rmSync(join(out, 'private/clients'), { recursive: true }),
    ]) {
      spoil();
      expect(await build('one')).toEqual({ changed: true });
      expect(snapshot()).toBe(before);
    }
    rmSync(join(out, 'public'));
    expect(await build('one')).toEqual({ changed: false });
    expect(snapshot()).toBe(before);
  });

  test('a build given up leaves the last one byte for byte', async () => {
    await build('one');
    const before = snapshot();
    const opened = await stage();
    await writeStaged(opened, 'public/index.html', 'half');
    await abandonStage(opened);
    expect(snapshot()).toBe(before);
  });

  test('a build that was killed is cleared away by the next', async () => {
    await build('one');
    const dead = join(out, '.builds', 'new-999999999');
    mkdirSync(dead);
    writeFileSync(join(dead, 'half'), '');
    await build('two');
    expect(existsSync(dead)).toBe(false);
  });

  test('output inside content, or content inside output, is refused; so is it through a link', async () => {
    expect(await openStage(join(content, 'out'), content)).toMatchObject({ code: 'output-in-content' });
    expect(await openStage(top, content)).toMatchObject({ code: 'output-in-content' });
    symlinkSync(content, join(top, 'alias'));
    expect(await openStage(join(top, 'alias', 'out'), content)).toMatchObject({ code: 'output-in-content' });
    expect(existsSync(join(content, 'out'))).toBe(false);
  });

  test('a folder of the coach’s own called public is never touched', async () => {
    mkdirSync(join(out, 'public'), { recursive: true });
    writeFileSync(join(out, 'public/mine.txt'), 'mine');
    expect(await openStage(out, content)).toMatchObject({ code: 'output-occupied' });
    expect(readFileSync(join(out, 'public/mine.txt'), 'utf8')).toBe('mine');
  });

  test('an output that cannot be a folder', async () => {
    expect(await openStage('/dev/full', content)).toMatchObject({
      code: 'output-not-writable',
      data: { why: 'part of the path is a file, not a folder' },
    });
  });
});
