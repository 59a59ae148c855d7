/** A coach's own picture on paper, as outside readers find it: poppler's list of images, the image itself, what is read in its place. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { clientId } from '../../src/model/identity.js';
import type { Photograph } from '../../src/model/picture.js';
import { invariant } from '../../src/model/result.js';
import { preparePicture } from '../../src/pictures/prepare-picture.js';
import { drawBooklet, layOutToDraw } from '../../src/print/draw-booklet.js';
import { fixtureBooklet } from '../fixtures/booklet.js';
import { drawnOf } from '../fixtures/drawn.js';
import { PLANTED, photograph, tagsIn, withMetadata } from '../pictures/photographs.js';
import { offTheGrid, offThePage, overlaps } from './grid-faults.js';
import { partsOf } from './parts-of.js';
import { readPdf, tagsOf } from './read-pdf.js';

const SAID = 'Somebody sits between the heels with a bell close to the chest.';
const CLIENT = clientId('somebody');

const folder = mkdtempSync(join(tmpdir(), 'photograph-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const [part] = partsOf(fixtureBooklet, 'exercise');
invariant(part !== undefined, 'the fixture has an exercise');
let own: Photograph;
let bytes: Uint8Array;
const file = join(folder, 'booklet.pdf');

const shown = () => ({
  drawings: new Map([[part.id, drawnOf(['start', 'end'])]]),
  photographs: new Map([[part.id, own]]),
});

async function drawn(): Promise<Uint8Array> {
  const { value } = await drawBooklet(fixtureBooklet, CLIENT, undefined, shown());
  invariant(value !== null, 'it can be printed');
  return value;
}

beforeAll(async () => {
  const taken = withMetadata(await photograph(1600), folder, 'taken.jpg', 6);
  const prepared = await preparePicture(taken, 'taken.jpg', 'squat');
  if ('fault' in prepared) throw new Error(prepared.fault);
  own = { said: SAID, ...prepared };
  bytes = await drawn();
  writeFileSync(file, bytes);
}, 60_000);

test('it is in the file once, in greys, upright, as it was prepared, and nothing else is', async () => {
  const [, , ...rows] = execFileSync('pdfimages', ['-list', file], { encoding: 'utf8' }).trimEnd().split('\n');
  const images = rows.map((row) => row.trim().split(/\s+/));
  // Columns: page, number, type, width, height, colours, components, bits, encoding.
  expect(images.map((row) => row.slice(2, 9))).toEqual([['image', '720', '960', 'gray', '1', '8', 'jpeg']]);
  execFileSync('pdfimages', ['-all', file, join(folder, 'found')]);
  const found = readFileSync(join(folder, 'found-000.jpg'));
  expect(Buffer.compare(found, Buffer.from(own.paper?.bytes ?? []))).toBe(0);
  const told = tagsIn(found, folder, 'read.jpg').filter((tag) => !/^(File|Composite|JFIF):/.test(tag));
  expect(told).toEqual([]);
  for (const word of Object.values(PLANTED)) expect(Buffer.from(bytes).includes(word)).toBe(false);
  // Turned upright, its upper right corner is the one that was red: darker than the sky beside it.
  const { data, info } = await sharp(found).raw().toBuffer({ resolveWithObject: true });
  const at = (x: number, y: number): number => data[(y * info.width + x) * info.channels] ?? Number.NaN;
  expect(at(700, 20)).toBeLessThan(at(20, 20) - 20);
});

test('it stands in the place of the drawing, beside the words, where nothing else does', async () => {
  const { value } = await layOutToDraw(fixtureBooklet, CLIENT, undefined, shown());
  const pages = value?.pages ?? [];
  const boxes = pages.flatMap((page) => page.boxes);
  expect(boxes.filter(({ kind }) => kind === 'picture')).toEqual([]);
  expect(boxes.filter(({ kind }) => kind === 'photograph')).toHaveLength(1);
  expect(pages.flatMap((page) => [...offThePage(page), ...offTheGrid(page, 7), ...overlaps(page)])).toEqual([]);
});

test('what the coach says of it is read in its place', async () => {
  const { pages } = await readPdf(bytes);
  expect(
    tagsOf(
      pages.flatMap(({ tags }) => tags),
      'Figure',
    ).map(({ alt }) => alt),
  ).toContain(SAID);
});

test('the same picture gives the same file', async () => {
  expect(Buffer.compare(Buffer.from(await drawn()), Buffer.from(bytes))).toBe(0);
});
