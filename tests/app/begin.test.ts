/** The first ten minutes, as README.md prints them: begun, built, broken, mended; and a folder that is not for it. */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { keepLinksTo, STARTER_EXERCISES } from '../../src/app/starter-files.js';
import { bytesBelow, chalkleaf, chalkleafAlone, type Ran, TOP, workFolder, writeFiles } from './run-chalkleaf.js';

let work = workFolder();
let studio = '';
beforeEach(() => {
  work = workFolder();
  studio = join(work.path, 'my-studio');
});
afterEach(() => work.away());

const begin = (folder = studio, ...more: readonly string[]): Ran => chalkleaf(['begin', folder, ...more]);
const run = (command: string, ...more: readonly string[]): Ran =>
  chalkleaf([command, '--content', join(studio, 'content'), '--today', '2026-11-24', ...more]);
const page = (path: string): string => readFileSync(join(studio, 'content', path), 'utf8');
const CLIENT = 'clients/ash-venn/client.md';
const PROGRAMME = 'programmes/first-six-weeks.md';

describe('the first ten minutes', () => {
  test('the commands README.md prints are those, and they work from the folder of Chalkleaf', () => {
    const readme = readFileSync(join(TOP, 'README.md'), 'utf8');
    const part = /## Your first own studio in ten minutes\n([\s\S]*?)\n## /.exec(readme)?.[1] ?? '';
    const printed = [...part.matchAll(/^npx chalkleaf ([^#\n]+?)\s*(?:#.*)?$/gm)].map(([, args = '']) =>
      args.split(' '),
    );
    expect(printed.map(([command]) => command)).toEqual(['begin', 'build', 'check']);
    for (const args of printed) {
      const here = args.map((arg) => arg.replace('../my-studio', studio));
      const ran = chalkleafAlone(here[0] === 'begin' ? here : [...here, '--today', '2026-11-24']);
      expect(ran.err + ran.out).not.toMatch(/error|warning|advice/);
      expect(ran.code).toBe(0);
    }
    for (const [, path = ''] of part.matchAll(/`\.\.\/my-studio\/([^`]+)`/g)) {
      expect(existsSync(join(studio, path)), path).toBe(true);
    }
    for (const [, path = ''] of part.matchAll(/^\| `([^`<]+)` \|/gm)) {
      expect(existsSync(join(studio, path)), path).toBe(true);
    }
    expect(part).toContain(`${STARTER_EXERCISES.length} exercises`);
    // In a fresh copy there is no program yet: what makes it comes first, and is what the demo runs too.
    const lines = [...part.matchAll(/^(?:npm|npx) .*$/gm)].map(([line]) => line);
    expect(lines[0]).toMatch(/^npm ci\b/);
    const firstRun = readFileSync(join(TOP, 'src/app/first-run.mjs'), 'utf8');
    expect(firstRun).toContain("run('npm', ['ci',");
  });

  test('a studio of its own, with a squat, a hinge, a push, a pull, a carry, a brace and a warm-up', () => {
    const ran = begin();
    expect(ran.out).toMatch(/^Begun: 12 exercises, 1 programme and 1 invented client, in /);
    expect(ran.code).toBe(0);
    expect(readdirSync(studio).sort()).toEqual(['README.md', 'content']);
    const exercises = readdirSync(join(studio, 'content/exercises')).map((name) => page(`exercises/${name}`));
    const patterns = new Set(exercises.map((text) => /^pattern: (\w+)$/m.exec(text)?.[1]));
    for (const pattern of ['squat', 'hinge', 'push', 'pull', 'carry', 'brace']) expect(patterns).toContain(pattern);
    expect(exercises.some((text) => /^rehearses: .*carry/m.test(text))).toBe(true);
  });

  test('built without an error, a warning or advice; the client’s booklet is there, and nobody is withheld', () => {
    begin();
    const ran = run('build');
    expect(ran.code).toBe(0);
    expect(ran.out).not.toMatch(/ {2}(error|warning|advice) {2}|Advice|Withheld|too few|sets against/);
    const files = ['booklet.html', 'booklet-a5.pdf', 'plan.json'].map((name) => `clients/ash-venn/${name}`);
    for (const path of ['desk/index.html', ...files]) {
      expect(existsSync(join(studio, 'output/private', path)), path).toBe(true);
    }
    expect(existsSync(join(studio, 'output/public/index.html'))).toBe(true);
    expect(JSON.parse(run('check', '--json').out)).toMatchObject({ problems: [], withheld: [], exit: 0 });
  });

  test('broken as README.md says: told where, and what to write; the output stands; mended, all is as before', () => {
    begin();
    run('build');
    const before = bytesBelow(join(studio, 'output'));
    const good = page(PROGRAMME);
    writeFileSync(join(studio, 'content', PROGRAMME), good.replace('goblet-squat.md', 'goblet-sqat.md'));
    const ran = run('build');
    expect(ran.code).toBe(1);
    expect(ran.out).toMatch(/^programmes\/first-six-weeks\.md:\d+:\d+ {2}error {2}unknown-exercise/);
    expect(ran.out).toContain('write instead: goblet-squat  (did you mean that?)');
    expect(bytesBelow(join(studio, 'output'))).toEqual(before);
    writeFileSync(join(studio, 'content', PROGRAMME), good);
    expect(run('build').code).toBe(0);
    expect(bytesBelow(join(studio, 'output'))).toEqual(before);
  });

  test('what to do next is five lines, which name the folder as the coach did', () => {
    begin();
    const next = readFileSync(join(studio, 'README.md'), 'utf8');
    expect(next.match(/^\d\. /gm)).toEqual(['1. ', '2. ', '3. ', '4. ', '5. ']);
    expect(next).toContain(`--content ${studio}/content`);
    expect(next).not.toContain('FOLDER');
    expect(next).toContain('not medical advice');
  });

  test('the same bytes every time; and every exercise is the demo’s own but for links that lead out of it', () => {
    begin();
    begin(join(work.path, 'again'));
    expect(bytesBelow(join(work.path, 'again/content'))).toEqual(bytesBelow(join(studio, 'content')));
    for (const id of STARTER_EXERCISES) {
      const demo = readFileSync(join(TOP, 'content/exercises', `${id}.md`), 'utf8');
      const own = page(`exercises/${id}.md`);
      expect(own).toBe(keepLinksTo(STARTER_EXERCISES, demo));
      const left = own.split('\n');
      for (const line of demo.split('\n').filter((each) => !left.includes(each))) {
        expect(line).toMatch(/^- \[.*\]\(.*\.md\)|^## (Easier|Harder)$/);
      }
    }
  });
});

test('links that lead out go, and a heading left without a line', () => {
  const text =
    '## Easier\n\n- [A](a.md) — for load\n- Slower — for knee\n\n## Harder\n\n- [B](b.md)\n\n## Stop if\n\n- Pain.\n';
  expect(keepLinksTo(['b'], text)).toBe(text.replace('- [A](a.md) — for load\n', ''));
  expect(keepLinksTo(['a'], text)).toBe(text.replace('## Harder\n\n- [B](b.md)\n\n', ''));
  expect(keepLinksTo(['a', 'b'], text)).toBe(text);
});

describe('where it may stand', () => {
  test('an empty folder will do, and one whose parents are not there yet', () => {
    mkdirSync(studio);
    expect(begin().code).toBe(0);
    const deep = join(work.path, 'a/b/c');
    expect(begin(deep).code).toBe(0);
    expect(readdirSync(deep).sort()).toEqual(['README.md', 'content']);
  });

  test('what is hidden in it is no work of the coach’s: it stays', () => {
    writeFiles(studio, [
      ['.DS_Store', 'hidden'],
      ['.git/HEAD', 'hidden too'],
    ]);
    expect(begin().code).toBe(0);
    expect(readdirSync(studio).sort()).toEqual(['.DS_Store', '.git', 'README.md', 'content']);
    expect(readFileSync(join(studio, '.git/HEAD'), 'utf8')).toBe('hidden too');
  });

  test.each([['content/studio.md'], ['notes.txt']])('not one with anything to be seen in it: %s', (path) => {
    writeFiles(studio, [
      [path, 'mine'],
      ['.hidden', 'mine too'],
    ]);
    const before = bytesBelow(studio);
    const ran = begin();
    expect(ran.code).toBe(3);
    expect(ran.out).toContain('begin-not-empty');
    expect(ran.out).toContain(`‘${path.split('/')[0]}’ stands in it`);
    expect(ran.out).toContain('write instead: a folder that is empty, or not there yet');
    expect(ran.out).not.toContain('Begun');
    expect(bytesBelow(studio)).toEqual(before);
    expect(JSON.parse(begin(studio, '--json').out)).toMatchObject({ begun: null, exit: 3 });
  });

  test('nor a file, nor a place below one', () => {
    writeFileSync(studio, 'a file');
    const why = ['a file of that name stands there', 'part of the path is a file, not a folder'];
    for (const [i, folder] of [studio, join(studio, 'below')].entries()) {
      const ran = begin(folder);
      expect(ran.code).toBe(3);
      expect(ran.out).toContain('begin-not-writable');
      expect(ran.out).toContain(`: ${why[i]}.`);
      expect(ran.out + ran.err).not.toMatch(/\n\s+at /);
    }
    expect(readFileSync(studio, 'utf8')).toBe('a file');
  });

  test('nor where the system lets nobody make a folder: it says so, and does not try for ever', () => {
    const ran = begin('/proc/my-studio');
    expect(ran.code).toBe(3);
    expect(ran.out).toContain('begin-not-writable');
    expect(ran.out).toContain('Nothing was written.');
  });

  test('a disk that fills half way leaves nothing behind', () => {
    // A shell may bound the size of a file it lets a program write: the longest pages fail, the short ones do not.
    mkdirSync(dirname(studio), { recursive: true });
    const program = join(TOP, 'dist/src/app/main.js');
    const command = `trap '' XFSZ; ulimit -f 1; "${process.execPath}" "${program}" begin "${studio}"`;
    const done = spawnSync('bash', ['-c', command], { encoding: 'utf8' });
    expect(done.status).toBe(3);
    expect(done.stdout).toContain('begin-not-writable');
    expect(done.stdout).toContain('Nothing was written.');
    expect(existsSync(studio)).toBe(false);
  });

  test('without a folder named it is not understood', () => {
    expect(chalkleaf(['begin']).code).toBe(2);
  });
});

test('the invented client says so, and the page holds nobody real', () => {
  begin();
  expect(page(CLIENT)).toContain('Invented');
});
