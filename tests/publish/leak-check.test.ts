/** A client is found in a public file however the file is written, and nobody is found who is not there. */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { gzipSync, zlibSync } from 'fflate';
import PDFDocument from 'pdfkit';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { clientId } from '../../src/model/identity.js';
import { lookFor } from '../../src/publish/leak-check.js';
import { type PrivateKind, privateWordsOf } from '../../src/publish/private-words.js';
import { readPdfText } from '../../src/publish/read-pdf-text.js';
import { readTexts } from '../../src/publish/read-texts.js';
import { newKey, sealPart } from '../../src/publish/seal-booklet.js';
import { envelopesIn } from '../../src/publish/sealed-form.js';
import { foldText, wordsIn } from '../../src/publish/word-runs.js';

const PAGE = `---
name: Zoë Strauß
programme: two-days
starts: 2026-12-08
---

## Notes

Her sister came along to the second session in October. Ring 07700 900123, or +44 (0)1632 960 001.
Writes from zoe.strauss+gym@example.org, mostly at night. Canary k7q2m9x4.

## Tests
`;
const BOOKLET = '0f3a77c1d2b94e5fa6617c0b88d41e92';
const KEY = 'dGhpcy1pcy1hLWtleS1vZi0zMi1ieXRlcy1sb25nISEh';
const WORDS = privateWordsOf({
  client: clientId('zoe-strauss'),
  text: PAGE,
  name: 'Zoë Strauß',
  opaque: [BOOKLET],
  keys: [KEY, 'maple orbit candle river tiger velvet'],
  sent: ['my left knee clicked twice on the stairs'],
});
const look = lookFor(WORDS);
const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);
const latin1 = (text: string): Uint8Array => Uint8Array.from(text, (sign) => sign.charCodeAt(0));
const utf16 = (text: string): Uint8Array => new Uint8Array(Buffer.from(text, 'utf16le'));
const joined = (...parts: readonly Uint8Array[]): Uint8Array => new Uint8Array(Buffer.concat(parts));

async function kindsIn(bytes: Uint8Array, isOurs = false): Promise<readonly PrivateKind[] | null> {
  const texts = await readTexts(bytes, readPdfText, () => isOurs);
  return texts === null ? null : look({ path: 'a', texts }).map(({ word }) => word.kind);
}

const html = (body: string): Uint8Array => utf8(`<!doctype html><title>Plank</title><p>${body}</p>`);

test('what is private is read off the page itself, each once', () => {
  expect(WORDS.map(({ kind, text }) => [kind, text])).toEqual([
    ['name', 'Zoë Strauß'],
    ['key', KEY],
    ['key', 'maple orbit candle river tiger velvet'],
    ['file-name', 'zoe-strauss'],
    ['e-mail', 'zoe.strauss+gym@example.org'],
    ['phone', '07700 900123'],
    ['phone', '+44 (0)1632 960 001'],
    ['opaque', BOOKLET],
    ['opaque', 'k7q2m9x4'],
    ['note', 'Her sister came along to the second session in October'],
    ['note', expect.stringContaining('Ring 07700')],
    ['note', expect.stringContaining('Writes from')],
    ['note', 'my left knee clicked twice on the stairs'],
  ]);
});

test.each(['name : Ida Fell', 'Name: "Ida Fell" # since May', "'name': 'Ida Fell'", 'NAME= Ida Fell'])(
  'a name is one however it is typed: %s',
  (line) => {
    const words = privateWordsOf({ client: clientId('a'), text: `---\r\n${line}\r\nstarts: soon\r\n---\r\n` });
    expect(words.flatMap(({ kind, text }) => (kind === 'name' ? wordsIn(text) : []))).toEqual(['ida', 'fell']);
  },
);

describe('one case and one normal form', () => {
  // Rows of CaseFolding.txt (Unicode Character Database 15.1) with status C or F, and of NormalizationTest.txt.
  test.each([
    ['STRASSE', 'straße'],
    ['ẞ', 'ss'],
    ['ΌΣΟΣ', 'όσος'],
    ['ﬁnger', 'FINGER'],
    ['ŉ', 'ʼn'],
    ['Å', 'å'],
    ['Å', 'å'],
    ['①', '1'],
    ['ᾳ', 'αι'],
    ['Ꮳ', 'ꮳ'],
    ['가', '가'],
  ])('%s is %s', (a, b) => expect(foldText(a)).toBe(foldText(b)));

  test('what is not seen parts no word; letters without spaces between them each count', () => {
    expect(wordsIn('Ne\u00adll Fa\u200bne\u202e')).toEqual(['nell', 'fane']);
    expect(wordsIn('山田太郎さん')).toHaveLength(6);
  });
});

describe('found', () => {
  const name: readonly (readonly [string, Uint8Array])[] = [
    ['as it is', html('Zoë Strauß')],
    ['in capitals', html('ZOË STRAUSS')],
    ['decomposed', html('Zoë Strauß'.normalize('NFD'))],
    ['across elements', html('Z<b>oë</b></p><p><i>Strauß</i>')],
    ['with marks for spaces', html('<td>Zoë</td><td>Strauß</td>')],
    ['as character references', html('Zo&euml; Strau&#xdf;')],
    ['in an attribute', html('<img alt="Zo&#235;&nbsp;Strauß">')],
    ['in a comment', html('<!-- Zoë Strauß -->')],
    ['in an address', html('<a href="clients/Zo%C3%AB_Strau%c3%9f.html">')],
    ['in a script', utf8('var a="Zo\\u00eb Strau\\xdf"')],
    ['in a script, on two lines', utf8('var a="Zo\\u00eb\\nStrau\\xdf"')],
    ['in data, in two columns', utf8('{"a":"Zoë\\tStrauß"}')],
    ['in a style', utf8('a::after{content:"Zo\\eb  Strau\\df "}')],
    ['in JSON', utf8(JSON.stringify({ name: 'Zoë Strauß' }))],
    ['going on in the next line of a calendar', utf8('SUMMARY:Squat (Zoë Str\r\n auß)\r\n')],
    ['going on in the next line of a mail', utf8('Squat, Zoë Str=\r\nauß')],
    ['in a drawing', utf8('<svg xmlns="http://www.w3.org/2000/svg"><title>Zoë\u200d Strauß</title></svg>')],
    ['as UTF-16', joined(latin1('\xff\xfe'), utf16('Zoë Strauß'))],
    ['pressed', gzipSync(html('Zoë Strauß'))],
    [
      'in a picture in an address',
      html(`<img src="data:image/png;base64,${base64(png('tEXt', latin1('Author\0Zoë Strauß')))}">`),
    ],
    ['in words of a picture', png('tEXt', latin1('Author\0Zoë Strauß'))],
    ['in pressed words of a picture', png('zTXt', joined(latin1('Author\0\0'), zlibSync(latin1('Zoë Strauß'))))],
    [
      'in international words of a picture',
      png('iTXt', joined(latin1('Title\0\x01\0de\0\0'), zlibSync(utf8('Zoë Strauß')))),
    ],
    ['after the end of a picture', joined(png('tEXt', latin1('a\0b')), utf8('Zoë Strauß'))],
    ['in the metadata of a photograph', jpeg(utf16('Zoë Strauß'))],
    ['in a comment of a photograph', jpeg(utf8('Zoë Strauß'))],
  ];
  test.each(name)('a name %s', async (_, bytes) => expect(await kindsIn(bytes)).toEqual(['name']));

  test.each<readonly [PrivateKind, string]>([
    ['file-name', 'see zoe-strauss/client.md'],
    ['phone', 'ring 07700900123'],
    ['phone', 'ring +44 7700 900-123'],
    ['phone', 'tel:+441632960001'],
    ['opaque', `/${BOOKLET}/`],
    ['opaque', 'K7Q2M9X4'],
    ['key', `#${KEY}`],
    ['key', 'maple, orbit, candle, river, tiger, velvet'],
    ['note', 'her SISTER came along to the second session, in October'],
    ['note', 'My left knee clicked twice on the stairs!'],
  ])('%s: %s', async (kind, text) => expect(await kindsIn(html(text))).toEqual([kind]));

  test.each([
    ['surname first', html('Strauß Zoë')],
    ['surname first, with a comma', html('<td>STRAUSS,</td><td>Zoë</td>')],
    ['spelled in base64', html(`data-of="${base64(utf8('Zoë Strauß'))}"`)],
    ['spelled so for an address, in a longer one', html(`<a href="?q=${base64Address('name=Zoë Strauß;')}">`)],
    ['spelled so behind a path', html(`<a href="of/${base64(utf8('a Zoë Strauß'))}">`)],
    ['spelled so among bytes', html(base64(joined(latin1('\x00\x01\xff'), utf8('-Zoë Strauß-'), latin1('\x02'))))],
  ])('a name %s', async (_, bytes) => expect(await kindsIn(bytes)).toEqual(['name']));

  test('an e-mail address spelled in base64, wherever in it it begins', async () => {
    for (const before of ['', 'a', 'ab', 'abc']) {
      const bytes = utf8(JSON.stringify({ to: base64(utf8(`${before} zoe.strauss+gym@example.org`)) }));
      expect(await kindsIn(bytes), before).toEqual(expect.arrayContaining(['e-mail']));
    }
  });

  describe('a name of few letters', () => {
    const words = privateWordsOf({ client: clientId('bo'), text: '---\nname: Bo Li\n---\n' });
    const lookShort = lookFor(words.filter(({ kind }) => kind === 'name'));
    const found = async (bytes: Uint8Array): Promise<readonly string[]> =>
      lookShort({ path: 'a', texts: (await readTexts(bytes, readPdfText)) ?? [] }).map(({ inside }) => inside);
    const plain = sharp({
      create: {
        width: 64,
        height: 64,
        channels: 3,
        background: '#777',
        noise: { type: 'gaussian', mean: 128, sigma: 60 },
      },
    });
    const written = async (kind: 'jpeg' | 'webp' | 'gif' | 'png', ...tags: readonly string[]): Promise<Uint8Array> => {
      const bytes = await plain.clone().toFormat(kind).toBuffer();
      const done = spawnSync('exiftool', [...tags, '-o', '-', '-'], { input: bytes });
      expect(done.stderr.toString()).toBe('');
      expect(done.stdout.length).toBeGreaterThan(bytes.length);
      return new Uint8Array(done.stdout);
    };

    test.each([
      ['jpeg', '-Comment=Bo Li'],
      ['jpeg', '-EXIF:Artist=Bo Li'],
      ['jpeg', '-XMP-dc:Creator=Li, Bo'],
      ['jpeg', '-IPTC:By-line=Bo Li'],
      ['webp', '-EXIF:Artist=Bo Li'],
      ['webp', '-XMP-dc:Creator=Bo Li'],
      ['gif', '-Comment=Bo Li'],
      ['gif', '-XMP-dc:Creator=Bo Li'],
      ['png', '-PNG:Author=Bo Li'],
    ] as const)('in a %s as exiftool writes it, %s', async (kind, tag) => {
      expect(await found(await written(kind, tag))).toEqual(['its metadata']);
    });

    test('behind the end of a picture, and spelled in base64', async () => {
      for (const kind of ['jpeg', 'webp', 'gif'] as const) {
        const bytes = await written(kind, '-XMP-dc:Title=Squat');
        expect(await found(bytes)).toEqual([]);
        expect(await found(joined(bytes, utf8(' Bo Li')))).toEqual(['its metadata']);
      }
      expect(await found(html(`of=${base64(utf8('Bo Li'))}`))).toEqual(['what is written into it']);
    });

    test('not among the points of a picture, where any letters turn up', async () => {
      const [scan, ...rest] = ['\xff\xda\0\x08\x01\x01\0\0\x3f\0', ' Bo Li ', '\xff\xd9'];
      const bytes = joined(latin1('\xff\xd8'), ...[scan ?? '', ...rest].map(latin1));
      expect(await found(bytes)).toEqual([]);
    });
  });

  test('an e-mail address, and in it what the folder is called', async () => {
    expect(await kindsIn(html('zoe.strauss+gym@example.org'))).toEqual(expect.arrayContaining(['e-mail']));
  });

  test('in a PDF: its words, its title, its bookmarks, and what is attached', async () => {
    const face = createRequire(import.meta.url).resolve(
      '@expo-google-fonts/literata/400Regular/Literata_400Regular.ttf',
    );
    const cases: readonly ((pdf: PDFKit.PDFDocument) => unknown)[] = [
      (pdf) => pdf.font(face).text('Zoë Strauß'),
      (pdf) => (pdf.info.Title = 'Zoë Strauß'),
      (pdf) => pdf.outline.addItem('Zoë Strauß'),
      (pdf) => pdf.file(Buffer.from('Zoë Strauß'), { name: 'a.txt' }),
      (pdf) => pdf.font(face).text('A link', { link: 'https://example.org/Zo%C3%AB-Strau%C3%9F' }),
      (pdf) => pdf.font(face).text('Zoë ', { continued: true }).fontSize(30).text('Strauß'),
    ];
    for (const [index, work] of cases.entries()) {
      expect(await kindsIn(await pdfOf(work)), `case ${index}`).toEqual(['name']);
    }
    expect(await kindsIn(await pdfOf((pdf) => pdf.font(face).text('Plank, on the knees')))).toEqual([]);
  }, 120_000);

  test('beside what is sealed, and in what a sealed file says in clear', async () => {
    const key = newKey();
    const sealed = await sealPart(utf8('Zoë Strauß'), 'booklet', key);
    expect(await kindsIn(utf8(sealed), true)).toEqual([]);
    const beside = html(`<script type="application/json">{"booklet":"${sealed}"}</script> Zoë Strauß`);
    expect(await kindsIn(beside, true)).toEqual(['name']);
    const [, ...rest] = sealed.split('.');
    const head = Buffer.from(JSON.stringify({ alg: 'dir', enc: 'A256GCM', kid: 'Zoë Strauß' })).toString('base64url');
    expect(await kindsIn(utf8([head, ...rest].join('.')), true)).toEqual(['name']);
    // What nobody here sealed is read as it stands: it may be no more than a name in base64.
    const clear = Buffer.from(JSON.stringify({ alg: 'dir', enc: 'A256GCM' })).toString('base64url');
    const plain = [clear, '', 'a'.repeat(16), base64Address('For Zoë Strauß, on Thursdays.'), 'd'.repeat(22)].join('.');
    expect(envelopesIn(plain)).toEqual([plain]);
    expect(await kindsIn(utf8(plain))).toEqual(['name']);
    expect(await kindsIn(utf8(plain), true)).toEqual([]);
    // Five parts that look like an envelope and are none hide nothing.
    expect(wordsIn(`${'zoe-strauss-'.repeat(3)}.a.${'b'.repeat(16)}.${'c'.repeat(40)}.${'d'.repeat(22)}`)).toContain(
      'strauss',
    );
    expect(
      await kindsIn(utf8(`${'zoe-strauss-'.repeat(3)}.a.${'b'.repeat(16)}.${'c'.repeat(40)}.${'d'.repeat(22)}`)),
    ).toEqual(['file-name']);
  });
});

describe('a name of more than two words', () => {
  const words = privateWordsOf({ client: clientId('a'), text: '---\nname: Ada Marie-Louise Strand Holt\n---\n' });
  const lookLong = lookFor(words.filter(({ kind }) => kind === 'name'));
  const isFound = (text: string): boolean => lookLong({ path: '', texts: [{ inside: 'its text', text }] }).length > 0;

  test.each(['Ada Marie-Louise Strand Holt', 'Holt, Ada Marie-Louise Strand', 'ada holt', 'Holt, Ada'])('%s', (text) =>
    expect(isFound(text)).toBe(true),
  );
  test.each(['Ada Strand', 'Ada and Mr Holt', 'Marie Louise'])('not %s', (text) => expect(isFound(text)).toBe(false));
});

describe('not found', () => {
  test.each([
    ['a first name alone', 'Zoë went for a walk'],
    ['part of a word', 'Zoës Straußen and Azoë Strauß'],
    ['the other way about, far apart', 'Strauß, Richard, and Zoë'],
    ['other digits', '07700 9001234 and 17700 900124'],
    ['part of what is opaque', BOOKLET.slice(1)],
    ['part of a note', 'her sister came along'],
    ['a date', '2026-12-08'],
  ])('%s', async (_, text) => expect(await kindsIn(html(text))).toEqual([]));

  test('faces and pictures of the library itself', async () => {
    const icon = new Uint8Array(readFileSync(new URL('../../layouts/icons/icon-512.png', import.meta.url)));
    expect(await kindsIn(icon)).toEqual([]);
  });
});

test.each([
  ['an archive', latin1('PK\x03\x04\x14\0\0\0\x08\0')],
  ['noughts', new Uint8Array(64)],
  ['UTF-16 that does not say so', utf16('Zoë Strauß')],
  ['half a PDF', latin1('%PDF-1.7\n1 0 obj\n<<')],
  ['half a picture', png('tEXt', latin1('a\0b')).slice(0, 20)],
  ['pressed and broken', latin1('\x1f\x8b\x08\0\0\0')],
])('what cannot be read is not passed by: %s', async (_, bytes) => {
  expect(await kindsIn(bytes)).toBeNull();
});

function base64(bytes: Uint8Array): string {
  return Buffer.from(bytes).toString('base64');
}

function base64Address(text: string): string {
  return Buffer.from(text).toString('base64url');
}

/** One chunk of words between the first chunk and the last; check sums are nobody's concern here. */
function png(type: string, body: Uint8Array): Uint8Array {
  const chunk = (name: string, of: Uint8Array): Uint8Array => {
    const length = new Uint8Array(4);
    new DataView(length.buffer).setUint32(0, of.length);
    return joined(length, latin1(name), of, new Uint8Array(4));
  };
  return joined(
    latin1('\x89PNG\r\n\x1a\n'),
    chunk('IHDR', new Uint8Array(13)),
    chunk(type, body),
    chunk('IEND', new Uint8Array()),
  );
}

function jpeg(inside: Uint8Array): Uint8Array {
  return joined(latin1('\xff\xd8\xff\xe1\0\x40Exif\0\0II*\0'), inside, latin1('\0\0\xff\xd9'));
}

async function pdfOf(work: (pdf: PDFKit.PDFDocument) => unknown): Promise<Uint8Array> {
  const pdf = new PDFDocument({ size: 'A5' });
  const parts: Uint8Array[] = [];
  pdf.on('data', (part: Uint8Array) => parts.push(part));
  const done = new Promise((end) => pdf.on('end', end));
  pdf.text('');
  work(pdf);
  pdf.end();
  await done;
  return joined(...parts);
}
