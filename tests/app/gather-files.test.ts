/** A coach's folder as disks really are: links in circles, files that vanish, far too large, not ours to read. */
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { BOUNDS, gatherFiles, PICTURE_BOUND_BYTES } from '../../src/app/gather-files.js';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'chalkleaf-gather-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const put = (path: string, text = 'x'): void => {
  mkdirSync(join(folder, path, '..'), { recursive: true });
  writeFileSync(join(folder, path), text);
};
const codes = async (): Promise<string[]> =>
  (await gatherFiles(folder)).problems.map(
    (problem) => `${problem.code} ${problem.place?.file ?? '-'} ${problem.scope.kind}`,
  );

describe('gathering files', () => {
  test('Markdown alone, in order of code point, hidden files and editions left out', async () => {
    for (const path of ['studio.md', 'exercises/b.md', 'exercises/a.md', 'exercises/Z.md', 'exercises/é.md']) put(path);
    for (const path of ['.git/x.md', 'notes.txt', 'clients/ann/client.md', 'clients/ann/editions/1/words.md'])
      put(path);
    put('clients/ann/log/2027.md');
    const { value, problems } = await gatherFiles(folder);
    expect(value.map((file) => file.path)).toEqual([
      'clients/ann/client.md',
      'exercises/Z.md',
      'exercises/a.md',
      'exercises/b.md',
      'exercises/é.md',
      'studio.md',
    ]);
    expect(problems).toEqual([]);
  });

  test('no folder, or a file in its place', async () => {
    put('file');
    expect((await gatherFiles(join(folder, 'none'))).problems[0]?.code).toBe('content-missing');
    expect((await gatherFiles(join(folder, 'file'))).problems[0]?.code).toBe('content-missing');
  });

  test('links are told, never followed: a circle, a file elsewhere, a link to nothing', async () => {
    put('studio.md');
    mkdirSync(join(folder, 'exercises'));
    symlinkSync('..', join(folder, 'exercises', 'round'));
    symlinkSync('/etc/passwd', join(folder, 'exercises', 'elsewhere.md'));
    symlinkSync('nowhere', join(folder, 'exercises', 'gone.md'));
    expect(await codes()).toEqual([
      'link-not-followed exercises/elsewhere.md folder',
      'link-not-followed exercises/gone.md folder',
      'link-not-followed exercises/round folder',
    ]);
  });

  test('the content folder itself may be a link', async () => {
    put('real/studio.md');
    symlinkSync('real', join(folder, 'linked'));
    expect((await gatherFiles(join(folder, 'linked'))).value).toHaveLength(1);
  });

  test('a file of 50 MB, in a client’s folder: that client’s problem, and not read', async () => {
    put('clients/ann/client.md');
    truncateSync(join(folder, 'clients/ann/client.md'), 50 * 1024 * 1024);
    const { value, problems } = await gatherFiles(folder);
    expect(value).toEqual([]);
    expect(problems[0]).toMatchObject({
      code: 'file-too-large',
      scope: { kind: 'client', client: 'ann' },
      data: { megabytes: 50, mostMegabytes: BOUNDS.bytesInAFile / 1024 / 1024 },
    });
  });

  test('pictures beside the exercises: their beginnings, within a bound of their own, and no others', async () => {
    const picture = 'x'.repeat(3 * 1024 * 1024);
    put('exercises/Squat 1.JPG', picture);
    put('exercises/huge.png');
    truncateSync(join(folder, 'exercises/huge.png'), PICTURE_BOUND_BYTES + 1);
    symlinkSync('huge.png', join(folder, 'exercises', 'linked.webp'));
    for (const path of ['exercises/x.svg', 'exercises/more/deep.jpg', 'clients/ann/ann.jpg', 'logo.png']) put(path);
    const { value, problems } = await gatherFiles(folder);
    expect(value.map(({ path, bytes }) => [path, bytes.length])).toEqual([
      ['exercises/Squat 1.JPG', 4096],
      ['exercises/huge.png', 4096],
    ]);
    expect(problems.map(({ code, place, data }) => [code, place?.file, data])).toEqual([
      ['file-too-large', 'exercises/huge.png', { path: 'exercises/huge.png', megabytes: 21, mostMegabytes: 20 }],
      ['link-not-followed', 'exercises/linked.webp', { path: 'exercises/linked.webp' }],
    ]);
  });

  test('a pipe is not opened: it would wait for ever', async () => {
    mkdirSync(join(folder, 'exercises'));
    execFileSync('mkfifo', [join(folder, 'exercises', 'pipe.md')]);
    expect(await codes()).toEqual(['file-unreadable exercises/pipe.md folder']);
  });

  test('folders without end', async () => {
    put(`${'deep/'.repeat(BOUNDS.depth + 3)}a.md`);
    expect((await codes())[0]).toMatch(/^folder-too-deep/);
  });
});
