/** Keys as a coach works with them: made, changed, ended, backed up, put back; and that nothing of them is ever told. */
import { spawn, spawnSync } from 'node:child_process';
import { chmodSync, cpSync, existsSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { writeText } from '../../src/marks/write-text.js';
import type { Log } from '../../src/model/log.js';
import type { Lock } from '../../src/model/state.js';
import { MANIFEST } from '../../src/publish/manifest.js';
import { holdKey, openLock, openPart, readSealed } from '../../src/publish/seal-booklet.js';
import { sealMarks } from '../../src/publish/seal-marks.js';
import { someEvents } from '../app/receive-studio.js';
import {
  bytesBelow,
  chalkleaf,
  chalkleafAlone,
  type Ran,
  smallStudio,
  workFolder,
  writeFiles,
} from '../app/run-chalkleaf.js';
import { besideEnvelopes } from './envelope-letters.js';

// Each case runs the program several times over.
vi.setConfig({ testTimeout: 240_000 });

const work = workFolder();
afterAll(() => work.away());
const content = join(work.path, 'content');
const state = join(work.path, 'state');
const publicFolder = join(work.path, 'output', 'public');
const said: string[] = [];

function run(...args: string[]): Ran {
  const ran = chalkleaf([...args, '--content', content, '--today', '2026-12-28']);
  said.push(ran.out, ran.err);
  return ran;
}

const studioState = () => JSON.parse(readFileSync(join(state, 'studio.json'), 'utf8'));
const folderOf = (): string => studioState().folders[0]?.folder;
const lockOf = (folder = folderOf()): Lock => JSON.parse(readFileSync(join(state, 'keys', `${folder}.json`), 'utf8'));
const sealedPage = (): string => readFileSync(join(publicFolder, folderOf(), 'payload.html'), 'utf8');
const sealedFolders = (): string[] => readdirSync(publicFolder).filter((name) => /^[0-9a-f]{32}$/.test(name));

/** What a client with the link and the words finds in the public folder. */
async function opened(lock: Lock): Promise<string> {
  const text = /id="sealed">([^<]*)</.exec(sealedPage())?.[1] ?? '';
  const sealed = readSealed(text.replaceAll('\\u003c', '<')) ?? expect.fail('no sealed part');
  const found = await openLock(sealed, lock);
  if ('fault' in found) return found.fault;
  const part = await openPart(sealed.booklet, 'booklet', await holdKey(found.key));
  return 'fault' in part ? part.fault : new TextDecoder().decode(part.bytes);
}

/** Every secret that there is at the moment. */
function secrets(): string[] {
  const keys = readdirSync(join(state, 'keys')).map((name) =>
    JSON.parse(readFileSync(join(state, 'keys', name), 'utf8')),
  );
  return keys.flatMap(({ key, link, words, d }) => [key, link, words, d].filter((one) => typeof one === 'string'));
}
const everySecret: string[] = [];
const remember = (): void => {
  everySecret.push(...secrets());
};

beforeAll(() => {
  writeFiles(content, smallStudio());
  expect(run('issue', 'ash-venn').code).toBe(0);
});

test('what is issued has a folder and a key, for its owner alone', () => {
  expect(folderOf()).toMatch(/^[0-9a-f]{32}$/);
  expect(lockOf()).toMatchObject({ by: 'link' });
  // One star leaves out all that is in the folder, and itself: gitignore(5).
  expect(readFileSync(join(state, '.gitignore'), 'utf8')).toBe('*\n');
  for (const path of ['', 'keys']) expect(statSync(join(state, path)).mode & 0o777).toBe(0o700);
  for (const path of ['studio.json', '.gitignore', `keys/${folderOf()}.json`]) {
    expect(statSync(join(state, path)).mode & 0o777).toBe(0o600);
  }
  remember();
});

test('a build seals it into the public folder; the plain one stays in the private one', async () => {
  expect(run('build').code).toBe(0);
  expect(sealedFolders()).toEqual([folderOf()]);
  expect(await opened(lockOf())).toContain('Ash');
  expect(besideEnvelopes(sealedPage())).not.toMatch(/Ash|goblet|16 kg/i);
  const home = join(work.path, 'output/private/clients/ash-venn');
  for (const path of ['booklet.html', 'booklet/payload.html']) expect(existsSync(join(home, path))).toBe(true);
});

test('the folder’s own list holds, by the reckoning of sha256sum', () => {
  const done = spawnSync('sha256sum', ['--check', '--strict', MANIFEST], { cwd: join(publicFolder, folderOf()) });
  expect(String(done.stdout)).toMatch(/payload\.html: OK/);
  expect(done.status).toBe(0);
});

test('the pages of the folder are for no search engine, pass no address on, and say their policy', () => {
  for (const name of ['index.html', 'payload.html']) {
    const page = readFileSync(join(publicFolder, folderOf(), name), 'utf8');
    expect(page).toContain('<meta name="robots" content="noindex, nofollow"');
    expect(page).toContain('<meta name="referrer" content="no-referrer"');
    expect(page).toMatch(/http-equiv="Content-Security-Policy" content="default-src (&#39;|')none/);
  }
});

test.each([
  ['paper', 'booklet-a5.pdf'],
  ['calendar', 'sessions.ics'],
] as const)('%s travels sealed too', async (kind, file) => {
  const text = readFileSync(join(publicFolder, folderOf(), `${kind}.jwe`), 'utf8');
  const part = await openPart(text, kind, await holdKey(lockOf().key));
  const plain = readFileSync(join(work.path, 'output/private/clients/ash-venn', file));
  expect('bytes' in part && Buffer.from(part.bytes).equals(plain)).toBe(true);
});

test('built again it is the same, byte for byte; without its memory it is sealed anew, and opens the same', async () => {
  const before = bytesBelow(publicFolder);
  expect(run('build').out).toContain('nothing has changed');
  expect(bytesBelow(publicFolder)).toEqual(before);
  rmSync(join(state, 'sealed'), { recursive: true });
  run('build');
  const changed = bytesBelow(publicFolder).filter(
    ([path, bytes], at) => before[at]?.[0] !== path || before[at]?.[1] !== bytes,
  );
  const names = ['payload.html', 'paper.jwe', 'calendar.jwe', MANIFEST].map((name) => join(folderOf(), name));
  expect(changed.map(([path]) => path).sort()).toEqual(names.sort());
  expect(await opened(lockOf())).toContain('Ash');
});

test('without any client the rest of the public folder is the same, byte for byte', () => {
  const rest = bytesBelow(publicFolder).filter(([path]) => !path.startsWith(folderOf()));
  const alone = join(work.path, 'alone');
  cpSync(content, join(alone, 'content'), { recursive: true });
  rmSync(join(alone, 'content/clients'), { recursive: true });
  chalkleaf(['build', '--content', join(alone, 'content'), '--today', '2026-12-28']);
  expect(bytesBelow(join(alone, 'output/public'))).toEqual(rest);
});

describe('the studio’s key for marks', () => {
  test('is made once; then marks travel sealed to it, and no booklet carries more of it than one needs to seal', async () => {
    expect(run('key', 'new').out).toContain('Made: the studio’s key for marks.');
    expect(run('key', 'new').out).toContain('has its key for marks already');
    remember();
    run('build');
    const page = await opened(lockOf());
    const pair = JSON.parse(readFileSync(join(state, 'keys/marks-1.json'), 'utf8'));
    expect(page).toContain(pair.x);
    expect(page).not.toContain(pair.d);
    expect(statSync(join(state, 'keys/marks-1.json')).mode & 0o777).toBe(0o600);
  });

  test('receive opens what is sealed to it, to the one before it too, and takes plain marks as ever', async () => {
    const pair = JSON.parse(readFileSync(join(state, 'keys/marks-1.json'), 'utf8'));
    const edition = JSON.parse(readFileSync(join(content, 'clients/ash-venn/editions/1/edition.json'), 'utf8'));
    const log = { schema: 1, bookletId: edition.bookletId, device: 'phone-1', events: someEvents(3) } as unknown as Log;
    const sealed = join(work.path, 'sealed.txt');
    writeFileSync(sealed, await sealMarks(writeText(log), pair));
    expect(run('key', 'rotate').code).toBe(0);
    remember();
    const late = (...args: string[]) => chalkleaf(['receive', ...args, '--content', content, '--today', '2027-01-12']);
    const ran = late(sealed);
    expect([ran.code, ran.out]).toEqual([0, expect.stringContaining('3 ')]);
    const plain = join(work.path, 'plain.txt');
    writeFileSync(plain, writeText(log));
    expect(late(plain).code).toBe(0);
    const without = late(sealed, '--state', join(work.path, 'nowhere'));
    expect(without.code).toBe(1);
    expect(without.out).toContain('no key of the studio is here to open them');
    const text = readFileSync(sealed, 'utf8');
    writeFileSync(sealed, text.slice(0, text.length / 2));
    expect(late(sealed).out).toContain('These marks came sealed, and not whole');
  });
});

describe('a client’s key', () => {
  test('changed: another folder, another key, the old one gone from state and from what is public', async () => {
    const before = { folder: folderOf(), lock: lockOf() };
    const ran = run('key', 'rotate', 'ash-venn', '--by', 'both');
    expect([ran.code, ran.out]).toEqual([0, expect.stringContaining('another public folder and another key')]);
    remember();
    expect(folderOf()).not.toBe(before.folder);
    expect(existsSync(join(state, 'keys', `${before.folder}.json`))).toBe(false);
    run('build');
    expect(sealedFolders()).toEqual([folderOf()]);
    expect(await opened(before.lock)).toBe('wrong link');
    expect(await opened(lockOf())).toContain('Ash');
    const { link = '' } = lockOf();
    expect(await opened({ by: 'both', key: '', link })).toBe('wrong words');
  });

  test('by words alone no link carries anything', async () => {
    run('key', 'rotate', 'ash-venn', '--by', 'words');
    remember();
    run('build');
    const lock = lockOf();
    expect(lock.link).toBeUndefined();
    expect(await opened({ by: 'words', key: '', words: lock.words ?? '' })).toContain('Ash');
    // Closed once: the same bytes lie in the folder from build to build.
    const before = sealedPage();
    run('build');
    expect(sealedPage()).toBe(before);
  });

  test('ended: nothing of the client is public any more, and the key is gone; new makes another', () => {
    const before = folderOf();
    expect(run('key', 'end', 'ash-venn').out).toContain('Ended');
    const built = run('build');
    expect(built.code).toBe(0);
    expect(built.out).toContain('has no public folder and no key');
    expect(sealedFolders()).toEqual([]);
    expect(existsSync(join(state, 'keys', `${before}.json`))).toBe(false);
    expect(run('key', 'end', 'ash-venn').code).toBe(1);
    expect(run('key', 'new').out).toContain('ash-venn');
    remember();
    run('build');
    expect(sealedFolders()).toEqual([folderOf()]);
    expect(folderOf()).not.toBe(before);
  });
});

describe('keys stand apart', () => {
  const misplaced = (ran: Ran): void => {
    expect([ran.code, ran.out]).toEqual([3, expect.stringContaining('folder-misplaced')]);
  };

  test('from what is read and from what is built, whatever --state says', () => {
    for (const where of [content, join(content, 'keys'), join(work.path, 'output', 'private', 'keys')]) {
      const before = bytesBelow(work.path);
      misplaced(run('key', 'new', '--state', where));
      misplaced(run('issue', 'ash-venn', '--state', where));
      misplaced(run('key', 'restore', 'none', '--state', where));
      expect(bytesBelow(work.path)).toEqual(before);
    }
  });

  test('and what is uploaded from both', () => {
    for (const to of [join(content, 'upload'), join(state, 'upload'), join(publicFolder, 'upload')]) {
      const before = bytesBelow(work.path);
      misplaced(chalkleaf(['publish', '--content', content, '--to', to]));
      expect(bytesBelow(work.path)).toEqual(before);
    }
  });

  test('also where the content is named from within', () => {
    const ran = chalkleafAlone(['key', 'new', '--content', '.', '--today', '2026-12-28'], { cwd: content });
    expect([ran.code, ran.out]).toEqual([0, expect.stringContaining('has its key for marks already')]);
    expect(existsSync(join(content, 'state'))).toBe(false);
  });
});

describe('a backup', () => {
  const file = join(work.path, 'backup.jwe');
  const sheet = join(state, 'backup-words.txt');
  const restore = (words: string, to: string) =>
    spawnSync(
      process.execPath,
      [join('dist/src/app/main.js'), 'key', 'restore', file, '--content', content, '--state', to],
      {
        input: words,
        encoding: 'utf8',
      },
    );

  test('holds all keys sealed, opened by words that stand on a sheet; its words are the same the next time', () => {
    expect(run('key', 'backup', file).out).toContain('It was read back whole.');
    const text = readFileSync(file, 'utf8');
    for (const secret of secrets()) expect(text).not.toContain(secret);
    for (const path of [file, sheet]) expect(statSync(path).mode & 0o777).toBe(0o600);
    const words = readFileSync(sheet, 'utf8');
    run('key', 'backup', `${file}.second`);
    expect(readFileSync(sheet, 'utf8')).toBe(words);
    everySecret.push(words.split('\n')[3] ?? '');
    expect(run('key', 'backup', file).code).toBe(3);
  });

  test('put back where there is nothing it is all as it was', () => {
    const to = join(work.path, 'again');
    const done = restore(readFileSync(sheet, 'utf8'), to);
    expect([done.status, done.stdout]).toEqual([0, expect.stringContaining('Put back')]);
    for (const [path, bytes] of bytesBelow(to)) {
      expect(readFileSync(join(state, path)).toString('base64')).toBe(bytes);
      expect(statSync(join(to, path)).mode & 0o777).toBe(0o600);
    }
    expect(bytesBelow(join(to, 'keys'))).toEqual(bytesBelow(join(state, 'keys')));
    expect(restore(readFileSync(sheet, 'utf8'), to).status).toBe(3);
  });

  test('typed in, the words are taken at the end of their line', async () => {
    const to = join(work.path, 'typed');
    const args = ['dist/src/app/main.js', 'key', 'restore', file, '--content', content, '--state', to];
    const typing = spawn(process.execPath, args, { stdio: ['pipe', 'pipe', 'inherit'] });
    let told = '';
    typing.stdout.on('data', (part) => {
      told += String(part);
    });
    // Nobody closes what is typed into.
    typing.stdin.write(`${readFileSync(sheet, 'utf8').split('\n')[3]}\n`);
    expect(await new Promise((done) => typing.on('close', done)), told).toBe(0);
    expect(bytesBelow(join(to, 'keys'))).toEqual(bytesBelow(join(state, 'keys')));
  });

  test('with other words, or not whole, nothing is put back', () => {
    const to = join(work.path, 'never');
    expect(restore('one two three four five six', to).stdout).toContain('is not opened by these words');
    const whole = readFileSync(file, 'utf8');
    writeFileSync(file, whole.slice(0, 200));
    expect(restore(readFileSync(sheet, 'utf8'), to).stdout).toContain('is not whole');
    writeFileSync(file, 'nothing of the kind');
    expect(restore(readFileSync(sheet, 'utf8'), to).stdout).toContain('is not whole');
    expect(existsSync(to)).toBe(false);
  });
});

test('damaged keys stop a build, and what is wrong is said without a letter of them', () => {
  const path = join(state, 'keys', `${folderOf()}.json`);
  const whole = readFileSync(path, 'utf8');
  writeFileSync(path, whole.replace('"by"', '"bye"'));
  const before = bytesBelow(publicFolder);
  const ran = run('build');
  expect(ran.code).toBe(1);
  expect(ran.out).toContain('cannot be read');
  expect(bytesBelow(publicFolder)).toEqual(before);
  writeFileSync(path, whole);
  chmodSync(path, 0o600);
});

test('a key is in no content, nothing public and no line that was printed', () => {
  remember();
  const all = new Set(everySecret);
  expect(all.size).toBeGreaterThan(8);
  // What is handed over stands on the coach's own desk: there a link and words belong.
  const texts = [content, `${publicFolder}/`].flatMap((folder) =>
    bytesBelow(folder).map(([path, bytes]) => [path, Buffer.from(bytes, 'base64').toString('latin1')] as const),
  );
  texts.push(['what was printed', said.join('\n')]);
  expect(said.length).toBeGreaterThan(20);
  for (const secret of all) {
    expect(texts.filter(([, text]) => text.includes(secret)).map(([path]) => path)).toEqual([]);
  }
});

describe('an edition after the first', () => {
  const BELL = 'bells: 12, 16, 20';
  const page = join(content, 'clients/ash-venn/client.md');

  test('lies in the same folder under the same key, so that the link holds', async () => {
    const [folder, lock] = [folderOf(), lockOf()];
    writeFileSync(
      page,
      readFileSync(page, 'utf8').replace('minutes: 30', 'minutes: 40').replace(BELL, 'bells: 12, 16'),
    );
    expect(run('issue', 'ash-venn').out).toContain('edition 2');
    run('build');
    expect([folderOf(), lockOf()]).toEqual([folder, lock]);
    expect(await opened(lock)).toMatch(/Edition.2/);
  });

  test('that is withdrawn says so to who opens it, and holds no set any more', async () => {
    const before = await opened(lockOf());
    expect(before).toMatch(/12.kg/);
    expect(run('withdraw', 'ash-venn', '--why', 'ill since Sunday').code).toBe(0);
    run('build');
    const now = await opened(lockOf());
    expect(now).toMatch(/Do not train from (this|it)/);
    expect(now).not.toMatch(/12.kg|ill since Sunday/);
  });
});
