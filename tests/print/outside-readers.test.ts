/** What qpdf and poppler say of the file: sound, embedded, tagged, readable, and the same bytes wherever it is made. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { clientId } from '../../src/model/identity.js';
import { drawBooklet } from '../../src/print/draw-booklet.js';
import { fixtureBooklet, longNamesBooklet } from '../fixtures/booklet.js';
import { readObjects, textOf } from './matterhorn/pdf-objects.js';

const CLIENT = clientId('rowan-ashby');
const folder = mkdtempSync(join(tmpdir(), 'paper-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const run = (program: string, ...args: readonly string[]): string => execFileSync(program, args, { encoding: 'utf8' });

describe.each([
  ['ordinary', fixtureBooklet],
  ['hard to fit', longNamesBooklet],
])('%s', (name, booklet) => {
  const file = join(folder, `${name}.pdf`);
  beforeAll(async () => {
    const { value } = await drawBooklet({ ...booklet, title: 'Ann & <Bob>: six "weeks"' }, CLIENT);
    writeFileSync(file, value ?? new Uint8Array());
  });

  test('qpdf finds no fault', () => {
    expect(run('qpdf', '--check', file)).toContain('No syntax or stream encoding errors found');
  });

  test('poppler finds a tagged A5 file of PDF 1.7', () => {
    const info = run('pdfinfo', file);
    expect(info).toMatch(/^Tagged: +yes$/m);
    expect(info).toMatch(/^PDF version: +1\.7$/m);
    // ISO 216, A5: 148 x 210 mm, at 72 points to the inch.
    expect(info).toMatch(/^Page size: +419\.528 x 595\.276 pts$/m);
    expect(info).toContain('Ann & <Bob>: six "weeks"');
    expect(run('pdfinfo', '-meta', file)).toContain('Ann &amp; &lt;Bob&gt;');
  });

  test('its information is title, author, program and day, and not a key more', () => {
    const objects = readObjects(file);
    const info = objects.dict(objects.trailer['/Info']) ?? {};
    expect(Object.keys(info).sort()).toEqual(['/Author', '/CreationDate', '/Creator', '/Producer', '/Title']);
    const text = (key: string): string => textOf(objects.at(info[key]));
    expect([text('/Author'), text('/Creator'), text('/Producer')]).toEqual([booklet.author, 'Chalkleaf', 'Chalkleaf']);
    // ISO 32000-1, 7.9.4: a date is D:YYYYMMDDHHmmSS and a zone; the day alone is told, never an hour somebody worked.
    expect(text('/CreationDate')).toBe(`D:${booklet.date.replaceAll('-', '')}000000Z`);
  });

  test('every face is embedded, cut to what is used, and its letters can be copied out', () => {
    const fonts = run('pdffonts', file).trim().split('\n').slice(2);
    expect(fonts.length).toBe(5);
    expect(fonts.filter((font) => !/CID TrueType +Identity-H +yes yes yes/.test(font))).toEqual([]);
  });

  test('nothing is set in colour or in a tint', () => {
    const plain = join(folder, `${name}-plain.pdf`);
    run('qpdf', '--qdf', '--object-streams=disable', file, plain);
    const lines = readFileSync(plain, 'latin1').split('\n');
    expect(lines.filter((line) => / Tf .* Tm .*TJ ET$/.test(line)).length).toBeGreaterThan(100);
    const painted = lines.filter((line) => /^[\d. ]+ (rg|RG|k|K|g|G|sc|SC|scn|SCN)$|^\/\w+ (gs|sh|cs|CS)$/.test(line));
    expect(painted).toEqual([]);
  });

  test('poppler reads the words of a session', () => {
    const text = run('pdftotext', '-raw', file, '-').normalize('NFC');
    const session = booklet.parts.find((part) => part.kind === 'session');
    const names =
      session?.kind === 'session' ? session.rows.map((row) => row.name.split(' ').slice(0, 2).join(' ')) : [];
    expect(names.length).toBeGreaterThan(3);
    expect(names.filter((one) => !text.includes(one.normalize('NFC')))).toEqual([]);
  });
});

test('the same bytes twice, in another time zone and in another language', () => {
  const script = `
    import { createHash } from 'node:crypto';
    import { fixtureBooklet } from './tests/fixtures/booklet.ts';
    import { drawBooklet } from './src/print/draw-booklet.ts';
    import { clientId } from './src/model/identity.ts';
    const { value } = await drawBooklet(fixtureBooklet, clientId('x'));
    const { value: again } = await drawBooklet(fixtureBooklet, clientId('x'));
    console.log([value, again].map((bytes) => createHash('sha256').update(bytes).digest('hex')).join(' '));`;
  const hashes = [
    { TZ: 'UTC', LANG: 'C' },
    { TZ: 'Pacific/Kiritimati', LANG: 'tr_TR.UTF-8', LC_ALL: 'tr_TR.UTF-8' },
  ].flatMap((env) =>
    execFileSync(process.execPath, ['--import', 'tsx', '--input-type=module', '--eval', script], {
      encoding: 'utf8',
      env: { ...process.env, ...env },
    })
      .trim()
      .split(' '),
  );
  expect(hashes.length).toBe(4);
  expect(new Set(hashes).size).toBe(1);
  expect(hashes[0]).toMatch(/^[0-9a-f]{64}$/);
});
