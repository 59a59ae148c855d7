/** The program refuses to publish a planted leak of any kind, and what was published before stands. */

import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  appendFileSync,
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { crc32 } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { bytesBelow, chalkleaf, type Ran, smallStudio, workFolder, writeFiles } from '../app/run-chalkleaf.js';

const CANARY = 'vq83kd02xw';
const NOTES = `
## Notes

Left the keys on the hook by the kitchen door. Ring 07700 900461. Mail ash.venn@example.org. ${CANARY}

Her brother drives her here every Thursday.
`;
/** Each is told once, with the first file that holds it: so each kind of leak has somebody of its own. */
const FORMER = [
  ['bea-lunn', 'Bea Lunn'],
  ['cal-dorn', 'Cal Dorn'],
  ['dee-marl', 'Dee Marl'],
  ['eli-strand', 'Eli Strand'],
] as const;
const work = workFolder();
const content = join(work.path, 'content');
const output = join(work.path, 'output');
const upload = join(output, 'upload');

const publish = (...more: readonly string[]): Ran => chalkleaf(['publish', '--content', content, ...more]);
const sealedFolder = (): string =>
  readdirSync(join(output, 'public')).find((name) => /^[0-9a-f]{32}$/.test(name)) ?? '';

beforeAll(() => {
  writeFiles(content, smallStudio());
  appendFileSync(join(content, 'clients/ash-venn/client.md'), NOTES);
  // Nobody's page where it lies, and somebody's name all the same.
  for (const [folder, name] of FORMER)
    writeFiles(content, [[`clients/archive/${folder}/client.md`, `---\nname: ${name}\n---\n`]]);
  for (const command of [['issue', 'ash-venn'], ['build']]) {
    const ran = chalkleaf([...command, '--content', content, '--today', '2026-11-24']);
    expect(ran.code, `${ran.out}${ran.err}`).toBe(0);
  }
}, 300_000);
afterAll(() => work.away());

test('nothing was built: it says so, and writes nothing', () => {
  const ran = chalkleaf(['publish', '--content', content, '--out', join(work.path, 'none')]);
  expect(ran.code).toBe(1);
  expect(ran.out).toContain('nothing-to-publish');
  expect(existsSync(join(work.path, 'none'))).toBe(false);
});

test('what was built is written whole, with its list and its headers, and twice gives the same', () => {
  const open = realpathSync(join(output, 'public'));
  const [folder, old] = [sealedFolder(), 'e'.repeat(32)];
  writeFiles(open, [['old-page.html', '<p>Old']]);
  const first = publish();
  expect(first.code, first.out).toBe(0);
  expect(first.out).toContain('1 sealed booklet');
  expect(first.out).not.toContain('deleted on the host');
  expect(first.out).toContain('no `address` in studio.md yet');
  rmSync(join(open, 'old-page.html'));
  // As if the booklet had lain in another folder.
  mkdirSync(join(realpathSync(upload), old));
  writeFiles(realpathSync(upload), [
    [`${old}/index.html`, 'sealed'],
    [`${folder}/old.js`, ''],
  ]);
  const ran = publish();
  expect(ran.code, ran.out).toBe(0);
  expect(ran.out).toMatch(/private words? in \d+ files: none was found/);
  expect(ran.out).toMatch(
    new RegExp(`deleted on the host.*:\n(  ${folder}/old\\.js\n|  ${old}/\n){2}  old-page\\.html\n`),
  );
  const before = bytesBelow(realpathSync(upload));
  const built = bytesBelow(realpathSync(join(output, 'public')));
  const added = ['.htaccess', '_headers', 'integrity.txt', 'nginx-headers.conf'];
  expect(before.filter(([path]) => !added.includes(path))).toEqual(built);
  // Whatever was laid there by hand since is no part of it; what a system keeps in a folder that is looked at never was.
  writeFiles(realpathSync(upload), [['letter.txt', 'For Ash Venn alone.']]);
  writeFiles(open, [['.DS_Store', Buffer.from([0, 0, 0, 1])]]);
  expect(publish().out).toMatch(/deleted on the host.*:\n {2}letter\.txt\n/);
  expect(bytesBelow(realpathSync(upload))).toEqual(before);
  rmSync(join(open, '.DS_Store'));
  expect(publish().out).toContain('nothing has changed');
  expect(bytesBelow(realpathSync(upload))).toEqual(before);
});

test('GNU sha256sum finds every file of the library and of the sealed folder as listed', () => {
  for (const folder of [upload, join(upload, sealedFolder())]) {
    const done = spawnSync('sha256sum', ['--check', '--strict', '--quiet', 'integrity.txt'], {
      cwd: folder,
      encoding: 'utf8',
    });
    expect(done.stderr + done.stdout).toBe('');
    expect(done.status).toBe(0);
    expect(readFileSync(join(folder, 'integrity.txt'), 'utf8').split('\n').length).toBeGreaterThan(8);
  }
  expect(readFileSync(join(upload, 'integrity.txt'), 'utf8')).not.toContain(sealedFolder());
});

/** The smallest picture there is, with a text beside its one point: a chunk as the PNG specification has it (5.3, 11.3.3). */
function pngWith(text: string): Uint8Array {
  const picture = Buffer.from(GREY_POINT, 'base64');
  const named = Buffer.from(`tEXt${text}`, 'latin1');
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(named.length - 4);
  sum.writeUInt32BE(crc32(named));
  const end = picture.length - 12;
  return Buffer.concat([picture.subarray(0, end), length, named, sum, picture.subarray(end)]);
}
const GREY_POINT = 'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==';

/** An envelope by its form (RFC 7516, section 3.1), with nothing in it that was ever sealed. */
const looksSealed = (text: string): string => {
  const coded = (part: string): string => Buffer.from(part).toString('base64url');
  return [coded('{"alg":"dir","enc":"A256GCM"}'), '', 'a'.repeat(16), coded(text), 'b'.repeat(22)].join('.');
};

describe('refused, with the client’s page and line, and what stands stands', () => {
  const secret = (): string => {
    const { key } = JSON.parse(readFileSync(join(work.path, 'state', 'keys', `${sealedFolder()}.json`), 'utf8'));
    return String(key);
  };
  const bookletId = (): string =>
    JSON.parse(readFileSync(join(content, 'clients/ash-venn/editions/1/edition.json'), 'utf8')).bookletId;

  const planted: readonly (readonly [string, string, () => string | Uint8Array, RegExp])[] = [
    [
      'a full name',
      'notes.html',
      () => '<p>For <b>Cal</b>&nbsp;DORN',
      /cal-dorn\/client\.md:2:7 .*leak-found.*the name of a client/,
    ],
    ['the client’s folder', 'links.txt', () => 'see clients/ash-venn', /leak-found/],
    ['a name in a file’s name', 'Dee_Marl.txt', () => 'nothing', /leak-found.*in its path/],
    ['an e-mail address', 'about.html', () => '<a href="mailto:ash%2Evenn@example.org">', /leak-found/],
    ['a telephone number', 'about.txt', () => '+44 7700-900461', /client\.md:\d+:\d+ .*a telephone number/],
    ['a canary', 'search.json', () => `{"a":"${CANARY.toUpperCase()}"}`, /what only a client’s own files hold/],
    [
      'a sentence of the notes',
      'a.css',
      () => '/* left the keys on the hook by the kitchen door */',
      /a sentence of your notes/,
    ],
    ['the booklet’s id', 'b.js', () => `const id="${bookletId()}"`, /what only a client’s own files hold/],
    [
      'the sealed folder’s name',
      'sitemap.txt',
      () => `https://example.org/${sealedFolder()}/`,
      /what only a client’s own files hold/,
    ],
    ['the key', 'c.txt', () => `#${secret()}`, /a key, or words that open a booklet/],
    [
      'a page of the desk',
      'zz-desk.html',
      () => readFileSync(join(output, 'private/desk/index.html')),
      /a page of your own, which is not for others/,
    ],
    [
      'the words of a PDF',
      'card.pdf',
      () => readFileSync(join(output, 'private/clients/ash-venn/booklet-a5.pdf')),
      /ash-venn\/client\.md:2:7 .*‘card\.pdf’ holds the name of a client.* in its text/,
    ],
    [
      'what is written into a picture',
      'pictures/bell.png',
      () => pngWith('Author\0Eli Strand'),
      /leak-found.*the name of a client/,
    ],
    [
      'what only looks sealed',
      'd.txt',
      () => looksSealed('Her brother drives her here every Thursday.'),
      /a sentence of your notes/,
    ],
    ['somebody of former years', 'old.txt', () => 'Lunn, Bea', /bea-lunn\/client\.md:2:7 .*the name of a client/],
    ['an archive', 'all.zip', () => Buffer.from('PK\x03\x04\x00\x00\xff'), /public-unreadable/],
  ];

  /** One word is told once, with the first file that holds it: what would be told of another file goes apart. */
  const APART = ['the client’s folder', 'an e-mail address'];

  test.each([['all that can be told together'], ...APART.map((what) => [what])])('%s', (chosen) => {
    const before = bytesBelow(realpathSync(upload));
    const open = realpathSync(join(output, 'public'));
    const now = planted.filter(([what]) => (APART.includes(what) ? what === chosen : !APART.includes(chosen)));
    for (const [, path, make] of now) writeFiles(open, [[path, make()]]);
    try {
      const ran = publish();
      expect(ran.code).toBe(1);
      for (const [what, path, , says] of now) {
        expect(ran.out, what).toMatch(says);
        expect(ran.out, what).toContain(path);
      }
      expect(ran.out).toContain('Nothing was published');
      expect(ran.err).not.toMatch(/\bat .*:\d+:\d+/);
      expect(ran.out + ran.err).not.toContain(secret());
      expect(bytesBelow(realpathSync(upload))).toEqual(before);
    } finally {
      for (const [, path] of now) rmSync(join(open, path));
    }
  });

  test('a link out of the folder, a sealed folder that is nobody’s, a sealed file that was changed', () => {
    const open = realpathSync(join(output, 'public'));
    symlinkSync(join(content, 'clients/ash-venn/client.md'), join(open, 'linked.md'));
    mkdirSync(join(open, 'f'.repeat(32)));
    writeFileSync(join(open, 'f'.repeat(32), 'index.html'), 'nothing');
    appendFileSync(join(open, sealedFolder(), 'worker.js'), '\n');
    // What was not sealed here, and a list that says it was.
    const [calendar, list] = ['calendar.jwe', 'integrity.txt'].map((name) => join(open, sealedFolder(), name));
    const before = [calendar, list].map((path = '') => [path, readFileSync(path, 'utf8')] as const);
    const other = looksSealed('Nothing of anybody, and not sealed here.');
    writeFileSync(calendar ?? '', other);
    const sum = createHash('sha256').update(other).digest('hex');
    writeFileSync(list ?? '', (before[1]?.[1] ?? '').replace(/^\w+(?= {2}calendar\.jwe$)/m, sum));
    const ran = publish();
    for (const [path, text] of before) writeFileSync(path, text);
    expect(ran.out).toContain('‘calendar.jwe’ was changed');
    expect(ran.code).toBe(1);
    for (const code of ['public-unreadable', 'sealed-folder-unknown', 'sealed-folder-unlike'])
      expect(ran.out).toContain(code);
    rmSync(join(open, 'linked.md'));
    rmSync(join(open, 'f'.repeat(32)), { recursive: true });
  });
});

describe('refused where something private cannot be read: it cannot be looked for', () => {
  const client = join(content, 'clients/ash-venn/client.md');
  const kept = join(work.path, 'kept');
  const edition = join(content, 'clients/ash-venn/editions/1/edition.json');
  const state = ['--state', join(work.path, 'state')];
  const utf16 = (text: string): Buffer => Buffer.from(`\ufeff${text}`, 'utf16le');

  test.each<readonly [string, RegExp, () => void, () => void]>([
    ['no folder of content', /content-missing/, () => renameSync(content, kept), () => renameSync(kept, content)],
    [
      'a client’s page that is no UTF-8',
      /not-utf-8/,
      () => {
        cpSync(client, kept);
        writeFileSync(client, utf16(readFileSync(client, 'utf8')));
      },
      () => renameSync(kept, client),
    ],
    [
      'a client’s page that is too large',
      /file-too-large/,
      () => {
        cpSync(client, kept);
        appendFileSync(client, 'x'.repeat(3 * 1024 * 1024));
      },
      () => renameSync(kept, client),
    ],
    [
      'clients behind a link',
      /link-not-followed/,
      () => {
        renameSync(join(content, 'clients'), kept);
        symlinkSync(kept, join(content, 'clients'));
      },
      () => {
        rmSync(join(content, 'clients'));
        renameSync(kept, join(content, 'clients'));
      },
    ],
    [
      'an edition that was changed by hand',
      /edition-unreadable/,
      () => {
        cpSync(edition, kept);
        writeFileSync(edition, '{');
      },
      () => renameSync(kept, edition),
    ],
    [
      'marks that are none, beside a client’s page with a mistake',
      /marks-unreadable/,
      () => {
        cpSync(client, kept);
        writeFileSync(client, readFileSync(client, 'utf8').replace(/^days:/m, 'dayz:'));
        writeFiles(content, [['clients/ash-venn/log/phone.json', '{']]);
      },
      () => {
        rmSync(join(content, 'clients/ash-venn/log'), { recursive: true });
        renameSync(kept, client);
      },
    ],
  ])('%s', (_what, says, plant, mend) => {
    const before = bytesBelow(realpathSync(upload));
    plant();
    try {
      const ran = publish(...state);
      expect(ran.code, ran.out).toBe(1);
      expect(ran.out).toMatch(says);
      expect(ran.out).toContain('Nothing was published');
      expect(ran.out).not.toContain('none was found');
      expect(bytesBelow(realpathSync(upload))).toEqual(before);
    } finally {
      mend();
    }
  });
});

test('something of the coach’s own is not written over', () => {
  const own = join(work.path, 'own');
  mkdirSync(own);
  writeFileSync(join(own, 'letter.txt'), 'mine');
  const worker = join(realpathSync(join(output, 'public')), sealedFolder(), 'worker.js');
  writeFileSync(worker, readFileSync(worker, 'utf8').replace(/\n$/, ''));
  const ran = publish('--to', own);
  expect(ran.code, ran.out).toBe(3);
  expect(ran.out).toContain('output-occupied');
  expect(readdirSync(own)).toEqual(['letter.txt']);
});

test('a client named by an ordinary word is told by check, and publishing refuses too', () => {
  const page = join(content, 'clients/ash-venn/client.md');
  const text = readFileSync(page, 'utf8');
  writeFileSync(page, text.replace('name: Ash Venn', 'name: Goblet'));
  const checked = chalkleaf(['check', '--content', content, '--today', '2026-11-24']);
  expect(checked.code).toBe(1);
  expect(checked.out).toMatch(/client\.md:2:7 .*private-in-library.*exercises\/goblet-squat\.md, line \d+/);
  const ran = publish();
  expect(ran.code).toBe(1);
  expect(ran.out).toMatch(/leak-found.*more files/);
  writeFileSync(page, text);
});
