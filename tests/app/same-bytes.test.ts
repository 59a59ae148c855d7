/** The same content, state and day give the same bytes: in another folder, as another user, in another zone and language. */
import { execFileSync } from 'node:child_process';
import { chmodSync, utimesSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { DEEP } from '../deep.js';
import { demoStudio } from '../publish/demo-studio.js';
import { bytesBelow, chalkleafAlone, workFolder } from './run-chalkleaf.js';

/** One on folded sheets, in the studio's second language; in the deep run one in large print too. */
const CLIENTS = DEEP ? ['sunniva-lund', 'ansel-quill'] : ['sunniva-lund'];

const EVERYWHERE = [
  ['Pacific/Kiritimati', 'tr_TR.UTF-8'],
  ['America/Los_Angeles', 'ar_EG.UTF-8'],
  ['Asia/Kathmandu', 'en_GB.UTF-8'],
] as const;
/** The day after, and letters that turn over otherwise, are all one place has to have. */
const PLACES = DEEP ? EVERYWHERE : EVERYWHERE.slice(0, 1);

const work = workFolder();
let expected: ReturnType<typeof bytesBelow> = [];

function build(name: string, env: NodeJS.ProcessEnv, uid?: number): ReturnType<typeof bytesBelow> {
  const folder = join(work.path, name);
  const { content, output, state } = demoStudio(folder, CLIENTS);
  utimesSync(join(content, 'studio.md'), 1, 1);
  if (uid !== undefined) {
    chmodSync(work.path, 0o755);
    execFileSync('chown', ['-R', String(uid), folder]);
  }
  const ran = chalkleafAlone(
    ['build', '--content', content, '--out', output, '--state', state, '--today', '2026-11-24'],
    { env, cwd: folder, ...(uid === undefined ? {} : { uid }) },
  );
  expect(ran.code, `${ran.out}${ran.err}`).toBe(0);
  return bytesBelow(output);
}

beforeAll(() => {
  expected = build('first', { TZ: 'UTC', LANG: 'C', LC_ALL: 'C' });
}, 300_000);
afterAll(() => work.away());

describe('the same bytes', () => {
  test('there is something to compare', () => {
    expect(expected.length).toBeGreaterThan(120);
    const papers = expected.filter(([path]) => path.endsWith('.pdf')).map(([path]) => path);
    for (const client of CLIENTS) expect(papers.some((path) => path.includes(client))).toBe(true);
  });

  test.each(PLACES)(
    'in %s, %s, another folder',
    (zone, language) => {
      const env = { HOME: '/nonexistent', TZ: zone, LANG: language, LC_ALL: language };
      // Another user's, where that can be had.
      expect(build(language, env, process.getuid?.() === 0 ? 65534 : undefined)).toEqual(expected);
    },
    300_000,
  );
});
