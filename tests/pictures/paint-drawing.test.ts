/** The pictures by which exercises are shown elsewhere: what Chromium paints of the same, in bytes that say nothing else. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { FigureRow } from '../../layouts/figure.js';
import { PREVIEW } from '../../layouts/preview.js';
import { drawExercise } from '../../src/figures/draw-exercise.js';
import type { Drawing } from '../../src/model/picture.js';
import { paintDrawings } from '../../src/pictures/paint-drawing.js';
import { preparePicture } from '../../src/pictures/prepare-picture.js';
import { renderPreview } from '../../src/web/render-preview.js';
import { openBrowser } from '../browser/phone.js';
import { readDemo } from '../studio/demo-library.js';
import { tagsIn } from './photographs.js';

/** Seen from the side with kit and an arrow; lying, on a mat; with furniture; from above; in four positions. */
const NAMES = ['goblet-squat', 'push-up', 'step-up', 'bird-dog', 'get-up'];
const { width, height } = PREVIEW;
/** Points of other brightness, of a hundred thousand, between two painters of the same lines. */
const MOST = 30;

let folder: string;
let browser: Browser;
const drawings: Drawing[] = [];
let painted: readonly Uint8Array[];

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'chalkleaf-painted-'));
  browser = await openBrowser();
  const { exercises } = (await readDemo()).library;
  for (const name of NAMES) {
    const found = exercises.find(({ id }) => id === name);
    const drawing = found === undefined ? null : drawExercise(found);
    if (drawing === null) throw new Error(`${name} is not drawn`);
    drawings.push(drawing);
  }
  painted = await paintDrawings(drawings.map(renderPreview));
}, 300_000);
afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true, force: true });
});

/** As the page itself shows it, in Chromium: the same row, with the page's own style, as large as the white about it lets it be. */
async function shown(drawing: Drawing): Promise<Uint8Array> {
  const page = await browser.newPage({ viewport: { width, height } });
  const css = readFileSync('layouts/figure.css', 'utf8');
  const row = renderToString(h(FigureRow, { drawing, id: 'drawn' }));
  const style = `body{margin:0;background:#fff;color:#000;--page:#fff}svg{position:absolute;inset:48px;width:${width - 96}px;height:${height - 96}px}`;
  await page.setContent(`<!doctype html><style>${style}${css}</style>${row}`);
  const taken = await page.screenshot();
  await page.close();
  return new Uint8Array(taken);
}

const greys = async (picture: Uint8Array): Promise<Uint8Array> =>
  new Uint8Array(await sharp(picture).removeAlpha().extractChannel(0).raw().toBuffer());

/** Points of other brightness, of a hundred thousand. */
async function unlike(one: Uint8Array, two: Uint8Array): Promise<number> {
  const [a, b] = [await greys(one), await greys(two)];
  expect(a.length).toBe(width * height);
  expect(b.length).toBe(width * height);
  let other = 0;
  a.forEach((grey, at) => {
    if (Math.abs(grey - (b[at] ?? 0)) > 127) other += 1;
  });
  return (other / a.length) * 100_000;
}

test.each(NAMES.map((name, at) => [name, at] as const))(
  '%s is painted as Chromium shows it on its page',
  async (_, at) => {
    const [drawing, picture] = [drawings[at], painted[at]];
    if (drawing === undefined || picture === undefined) throw new Error('it is not drawn');
    expect(await unlike(picture, await shown(drawing))).toBeLessThan(MOST);
  },
);

test('another drawing is told from it, and so are its lines drawn a fifth too thin', async () => {
  const [first, second] = drawings;
  const [picture] = painted;
  if (first === undefined || second === undefined || picture === undefined) throw new Error('they are not drawn');
  expect(await unlike(picture, await shown(second))).toBeGreaterThan(20 * MOST);
  const [thin] = await paintDrawings([renderPreview(first).replace('stroke-width:14', 'stroke-width:11')]);
  expect(await unlike(thin ?? new Uint8Array(), await shown(first))).toBeGreaterThan(10 * MOST);
});

test('nothing stands in the file but the picture, and twice gives the same bytes', async () => {
  for (const [at, picture] of painted.entries()) {
    const tags = tagsIn(picture, folder, `${NAMES[at]}.png`);
    expect(
      tags.filter(
        (tag) =>
          !/^(File:|Composite:(ImageSize|Megapixels)$|PNG:(ImageWidth|ImageHeight|BitDepth|ColorType|Compression|Filter|Interlace)$|PNG-pHYs:)/.test(
            tag,
          ),
      ),
    ).toEqual([]);
    expect(await sharp(picture).metadata()).toMatchObject({ format: 'png', width, height, channels: 1 });
  }
  expect(await paintDrawings(drawings.map(renderPreview))).toEqual(painted);
});

test('the reader of drawings is there for our own alone: a coach’s file meets none, before and after', async () => {
  const svg = new TextEncoder().encode('<svg xmlns="http://www.w3.org/2000/svg" width="8" height="8"/>');
  expect(await preparePicture(svg, 'squat.png', 'squat')).toEqual({ fault: 'unreadable' });
  await expect(sharp(svg).metadata()).rejects.toThrow();
  await expect(paintDrawings(['<svg'])).rejects.toThrow();
  await expect(sharp(svg).metadata()).rejects.toThrow();
});
