/** The same content, state and day give the same bytes: in another folder, as another user, in another zone and language. */
import { execFileSync } from 'node:child_process';
import { chmodSync, utimesSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { bytesBelow, chalkleaf, copyDemo, workFolder } from './run-chalkleaf.js';

const first = workFolder();
const second = workFolder();
let expected: ReturnType<typeof bytesBelow> = [];

function build(folder: string, env: NodeJS.ProcessEnv, uid?: number): ReturnType<typeof bytesBelow> {
  const args = [
    'build',
    '--content',
    join(folder, 'content'),
    '--out',
    join(folder, 'output'),
    '--state',
    join(folder, 'state'),
  ];
  const ran = chalkleaf([...args, '--today', '2026-11-24'], {
    env,
    cwd: folder,
    ...(uid === undefined ? {} : { uid }),
  });
  // 1: one demo client is withheld on purpose.
  expect(ran.code).toBe(1);
  return bytesBelow(join(folder, 'output'));
}

beforeAll(() => {
  copyDemo(join(first.path, 'content'));
  copyDemo(join(second.path, 'content'));
  expected = build(first.path, { TZ: 'UTC', LANG: 'C', LC_ALL: 'C' });
});
afterAll(() => {
  first.away();
  second.away();
});

describe('the same bytes', () => {
  test('there is something to compare', () => {
    expect(expected.length).toBeGreaterThan(20);
    expect(expected.some(([path]) => path.endsWith('.pdf'))).toBe(true);
  });

  test.each([
    ['Pacific/Kiritimati', 'en_GB.UTF-8'],
    ['America/Los_Angeles', 'ar_EG.UTF-8'],
    ['Asia/Kathmandu', 'tr_TR.UTF-8'],
  ])('in %s, %s, another folder', (zone, language) => {
    const other = workFolder();
    try {
      copyDemo(join(other.path, 'content'));
      utimesSync(join(other.path, 'content/studio.md'), 1, 1);
      expect(build(other.path, { TZ: zone, LANG: language, LC_ALL: language })).toEqual(expected);
    } finally {
      other.away();
    }
  });

  test.runIf(process.getuid?.() === 0)('as another user', () => {
    chmodSync(second.path, 0o777);
    execFileSync('chown', ['-R', '65534', second.path]);
    expect(build(second.path, { HOME: '/nonexistent' }, 65534)).toEqual(expected);
  });

  test('the public half is the same with all clients absent', () => {
    const other = workFolder();
    try {
      copyDemo(join(other.path, 'content'));
      execFileSync('rm', ['-rf', join(other.path, 'content/clients')]);
      chalkleaf([
        'build',
        '--content',
        join(other.path, 'content'),
        '--out',
        join(other.path, 'output'),
        '--today',
        '2026-11-24',
      ]);
      expect(bytesBelow(join(other.path, 'output/public/'))).toEqual(bytesBelow(join(first.path, 'output/public/')));
    } finally {
      other.away();
    }
  });
});
