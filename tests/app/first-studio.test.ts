/** The smallest studio there can be: built, broken, mended, issued. What `begin` makes is tried in `begin.test.ts`. */
import { existsSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Edition } from '../../src/model/edition.js';
import { bytesBelow, chalkleaf, smallStudio, workFolder, writeFiles } from './run-chalkleaf.js';

let work = workFolder();
beforeEach(() => {
  work = workFolder();
  writeFiles(join(work.path, 'content'), smallStudio());
});
afterEach(() => work.away());

const run = (command: string, ...more: string[]) =>
  chalkleaf([
    command,
    '--content',
    join(work.path, 'content'),
    '--out',
    join(work.path, 'output'),
    '--state',
    join(work.path, 'state'),
    '--today',
    '2026-11-24',
    ...more,
  ]);

describe('the smallest studio', () => {
  test('built without a word of complaint', () => {
    const ran = run('build');
    expect(ran.out).not.toContain('error');
    expect(ran.code).toBe(0);
    for (const path of [
      'desk/index.html',
      'clients/ash-venn/booklet.html',
      'clients/ash-venn/booklet-a5.pdf',
      'clients/ash-venn/plan.json',
    ]) {
      expect(existsSync(join(work.path, 'output/private', path)), path).toBe(true);
    }
    expect(existsSync(join(work.path, 'output/public/index.html'))).toBe(true);
  });

  test('broken: told where and what to write; the last output stands; mended: as before', () => {
    expect(run('build').code).toBe(0);
    const before = bytesBelow(join(work.path, 'output'));
    const programme = join(work.path, 'content/programmes/first-six-weeks.md');
    const good = readFileSync(programme, 'utf8');
    writeFileSync(programme, good.replace('goblet-squat.md', 'goblet-sqat.md'));
    const ran = run('build');
    expect(ran.code).toBe(1);
    expect(ran.out).toContain('programmes/first-six-weeks.md:19:');
    expect(ran.out).toContain('goblet-squat');
    expect(bytesBelow(join(work.path, 'output'))).toEqual(before);
    writeFileSync(programme, good);
    expect(run('build').code).toBe(0);
    expect(bytesBelow(join(work.path, 'output'))).toEqual(before);
  });

  test('why says where a number comes from', () => {
    const ran = run('why', 'ash-venn', '--week', '1');
    expect(ran.code).toBe(0);
    expect(ran.out).toContain('goblet squat');
    expect(ran.out).toContain('12 kg');
  });

  test('issue freezes, and numbers; what is frozen is never written again, and nothing new is no edition', () => {
    const editions = join(work.path, 'content/clients/ash-venn/editions');
    expect(run('issue', 'ash-venn').out).toContain('edition 1');
    const first = bytesBelow(join(editions, '1'));
    expect(run('issue', 'ash-venn').out).toContain('Nothing has changed since edition 1');
    expect(run('issue', 'ash-venn', '--today', '2026-11-26').out).toContain('Nothing has changed since edition 1');
    const squat = join(work.path, 'content/exercises/goblet-squat.md');
    writeFileSync(squat, readFileSync(squat, 'utf8').replace('low stool', 'low bench'));
    expect(run('issue', 'ash-venn').out).toContain('edition 2');
    expect(bytesBelow(join(editions, '1'))).toEqual(first);
    const [one, two] = ['1', '2'].map(
      (n): Edition => JSON.parse(readFileSync(join(editions, n, 'edition.json'), 'utf8')),
    );
    expect(two?.bookletId).toBe(one?.bookletId);
    expect(two?.supersedes).toBe(1);
    expect(two?.wordsHash).not.toBe(one?.wordsHash);
    expect(one?.bookletId).toMatch(/^[0-9a-f]{32}$/);
    expect(statSync(join(work.path, 'state')).mode & 0o077).toBe(0);
    expect(run('check').code).toBe(0);
  });

  test('a damaged edition is told, and none is written over it', () => {
    expect(run('issue', 'ash-venn').code).toBe(0);
    const file = join(work.path, 'content/clients/ash-venn/editions/1/edition.json');
    writeFileSync(file, '{"schema":1');
    const ran = run('issue', 'ash-venn');
    expect(ran.code).toBe(1);
    expect(ran.out).toContain('edition-unreadable');
    expect(existsSync(join(work.path, 'content/clients/ash-venn/editions/2'))).toBe(false);
  });

  test('output and state lie beside the content, unless told otherwise', () => {
    const ran = chalkleaf(['build', '--content', join(work.path, 'content'), '--today', '2026-11-24']);
    expect(ran.code).toBe(0);
    expect(existsSync(join(work.path, 'output/private/desk/index.html'))).toBe(true);
  });
});
