/**
 * A coach's picture, read back after it was prepared: through exiftool, which shares no code with what prepared it, and
 * as bytes. ExifTool by P. Harvey reads EXIF 2.32, XMP, IPTC-IIM, ICC.1 and the chunks of PNG.
 */
import { createHash } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { PictureCopy } from '../../src/model/picture.js';
import { lookThrough, MOST_MEGAPIXELS, preparePicture } from '../../src/pictures/prepare-picture.js';
import { PLANTED, photograph, tagsIn, withMetadata } from './photographs.js';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'chalkleaf-pictures-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function copiesOf(bytes: Uint8Array, name: string): Promise<readonly PictureCopy[]> {
  const prepared = await preparePicture(bytes, name, 'squat');
  if ('fault' in prepared) throw new Error(prepared.fault);
  return prepared.copies;
}

const pointAt = async (bytes: Uint8Array, x: number, y: number): Promise<readonly number[]> => [
  ...(await sharp(bytes).extract({ left: x, top: y, width: 1, height: 1 }).removeAlpha().raw().toBuffer()),
];
function near(point: readonly number[], wanted: readonly number[], by: number): void {
  for (const [index, value] of point.entries()) {
    expect(Math.abs(value - (wanted[index] ?? -999))).toBeLessThanOrEqual(by);
  }
}

/** What a picture cannot be without: its size, and how its points are written down. */
const THE_PICTURE_ITSELF =
  /^(File:|Composite:(ImageSize|Megapixels)$|JFIF:(JFIFVersion|ResolutionUnit|XResolution|YResolution)$|PNG:(ImageWidth|ImageHeight|BitDepth|ColorType|Compression|Filter|Interlace)$|PNG-pHYs:)/;

describe('nothing but the picture', () => {
  test.each(['squat.jpg', 'squat.png', 'squat.webp'])('of %s', async (name) => {
    const format = name.endsWith('.jpg') ? 'jpeg' : name.endsWith('.png') ? 'png' : 'webp';
    const taken = withMetadata(await photograph(900, format), folder, name);
    // The traps are set: what is looked for below is there before.
    const before = tagsIn(taken, folder, `before-${name}`);
    expect(before).toEqual(expect.arrayContaining(['GPS:GPSLatitude', 'IFD0:Artist', 'XMP-dc:Creator']));
    expect(Buffer.from(taken).includes(PLANTED.name)).toBe(true);
    const copies = await copiesOf(taken, name);
    expect(copies.map(({ width, height }) => [width, height])).toEqual([
      [320, 240],
      [640, 480],
      [900, 675],
    ]);
    for (const copy of copies) {
      expect(tagsIn(copy.bytes, folder, copy.name).filter((tag) => !THE_PICTURE_ITSELF.test(tag))).toEqual([]);
      const text = Buffer.from(copy.bytes).toString('latin1');
      for (const word of [...Object.values(PLANTED), 'Exif', 'http', 'ICC_PROFILE', 'iCCP', 'tEXt', 'eXIf'])
        expect(text.includes(word)).toBe(false);
    }
  });

  test('what is hung on behind a JPEG is gone', async () => {
    const hung = Buffer.concat([await photograph(400), Buffer.from(PLANTED.name), await photograph(200)]);
    for (const { bytes } of await copiesOf(hung, 'squat.jpg'))
      expect(Buffer.from(bytes).includes(PLANTED.name)).toBe(false);
  });
});

describe('the picture is the same to look at', () => {
  // EXIF 2.32, table 6: 6 is a quarter turn to the right to be made, 3 a half turn, 5 mirrored as well.
  test.each([
    [1, 640, 480, 'left top'],
    [3, 640, 480, 'right bottom'],
    [6, 480, 640, 'right top'],
    [8, 480, 640, 'left bottom'],
    [2, 640, 480, 'right top'],
    [5, 480, 640, 'left top'],
  ] as const)('orientation %i', async (orientation, width, height, corner) => {
    const taken = withMetadata(await photograph(640), folder, 'turned.jpg', orientation);
    const widest = (await copiesOf(taken, 'turned.jpg')).at(-1);
    expect([widest?.width, widest?.height]).toEqual([width, height]);
    const x = corner.startsWith('left') ? 40 : width - 40;
    const y = corner.endsWith('top') ? 40 : height - 40;
    near(await pointAt(widest?.bytes ?? new Uint8Array(), x, y), [220, 20, 20], 12);
  });

  test('a wide-gamut profile is reduced to sRGB and left out', async () => {
    const points = Buffer.alloc(64 * 64 * 3).fill(Buffer.from([180, 110, 70]));
    const plain = sharp(points, { raw: { width: 64, height: 64, channels: 3 } });
    // Display P3 as a camera writes it: the points as they are, with the profile beside them.
    const profiled = await plain.keepIccProfile().withIccProfile('p3', { attach: true }).png().toBuffer();
    const [copy] = await copiesOf(profiled, 'wide.png');
    expect(tagsIn(profiled, folder, 'wide.png').some((tag) => tag.startsWith('ICC'))).toBe(true);
    expect(tagsIn(copy?.bytes ?? new Uint8Array(), folder, copy?.name ?? '').filter((tag) => /ICC/.test(tag))).toEqual(
      [],
    );
    // The points of the file itself, taken for P3, by the matrices of CSS Color 4, section 18 (sample code).
    const raw = await sharp(profiled, { ignoreIcc: true }).removeAlpha().raw().toBuffer();
    near(await pointAt(copy?.bytes ?? new Uint8Array(), 30, 30), fromP3([raw[0] ?? 0, raw[1] ?? 0, raw[2] ?? 0]), 2);
  });

  test('clear parts stand on white, and grey and sixteen bits are taken', async () => {
    const clear = await sharp({ create: { width: 40, height: 30, channels: 4, background: '#00000000' } })
      .png()
      .toBuffer();
    near(await pointAt((await copiesOf(clear, 'clear.png'))[0]?.bytes ?? new Uint8Array(), 9, 9), [255, 255, 255], 0);
    const deep = await sharp({ create: { width: 40, height: 30, channels: 3, background: '#808080' } })
      .toColourspace('rgb16')
      .png()
      .toBuffer();
    near(await pointAt((await copiesOf(deep, 'deep.png'))[0]?.bytes ?? new Uint8Array(), 9, 9), [128, 128, 128], 1);
    const grey = await sharp({ create: { width: 40, height: 30, channels: 3, background: '#808080' } })
      .grayscale()
      .jpeg()
      .toBuffer();
    near(await pointAt((await copiesOf(grey, 'grey.jpg'))[0]?.bytes ?? new Uint8Array(), 9, 9), [128, 128, 128], 2);
  });
});

const MATRIX: readonly (readonly number[])[] = [
  [1.2249401762805598, -0.22494017628055996, 0],
  [-0.042056954709688163, 1.0420569547096881, 0],
  [-0.019637554590334432, -0.078636045550631889, 1.0982736001409663],
];
const linear = (value: number): number => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4);
const curved = (value: number): number => (value <= 0.0031308 ? value * 12.92 : 1.055 * value ** (1 / 2.4) - 0.055);
const fromP3 = (point: readonly number[]): readonly number[] => {
  const light = point.map((value) => linear(value / 255));
  return MATRIX.map((row) => {
    const value = row.reduce<number>((sum, factor, index) => sum + factor * (light[index] ?? 0), 0);
    return Math.round(255 * curved(Math.max(0, Math.min(1, value))));
  });
};

describe('several widths', () => {
  test('a large one in three, named for the exercise alone', async () => {
    const copies = await copiesOf(await photograph(2000), `${PLANTED.name}.jpg`);
    expect(copies.map(({ name, width, height, type }) => [name, width, height, type])).toEqual([
      ['squat-320.jpg', 320, 240, 'image/jpeg'],
      ['squat-640.jpg', 640, 480, 'image/jpeg'],
      ['squat-1280.jpg', 1280, 960, 'image/jpeg'],
    ]);
  });

  test('a small one is never enlarged', async () => {
    expect((await copiesOf(await photograph(200), 'squat.jpg')).map(({ width }) => width)).toEqual([200]);
    expect((await copiesOf(await photograph(320), 'squat.jpg')).map(({ width }) => width)).toEqual([320]);
  });

  test('a drawing of few lines stays without loss, a photograph saved as PNG does not', async () => {
    const drawn = await sharp({ create: { width: 800, height: 600, channels: 3, background: '#fff' } })
      .composite([
        { input: { create: { width: 300, height: 9, channels: 3, background: '#000' } }, left: 100, top: 90 },
      ])
      .png()
      .toBuffer();
    expect((await copiesOf(drawn, 'drawn.png')).map(({ type }) => type)).toEqual(Array(3).fill('image/png'));
    expect((await copiesOf(await photograph(700, 'png'), 'taken.png')).map(({ type }) => type)).toEqual(
      Array(3).fill('image/jpeg'),
    );
  });

  test('the same bytes each time', async () => {
    const taken = await photograph(1400);
    const sum = async (): Promise<readonly string[]> =>
      (await copiesOf(taken, 'squat.jpg')).map(({ bytes }) => createHash('sha256').update(bytes).digest('hex'));
    expect(await sum()).toEqual(await sum());
  });
});

describe('what cannot be taken', () => {
  test('cut off, damaged, nothing, another kind', async () => {
    const taken = await photograph(600);
    const cut = taken.subarray(0, taken.length / 2);
    const unreadable = { fault: 'unreadable' };
    expect(await lookThrough(taken, 'squat.jpg')).toBeUndefined();
    expect(await lookThrough(cut, 'squat.jpg')).toEqual(unreadable);
    expect(await lookThrough(new Uint8Array(), 'squat.jpg')).toEqual(unreadable);
    expect(await lookThrough(taken.subarray(0, 40), 'squat.jpg')).toEqual(unreadable);
    expect(await lookThrough(await photograph(60, 'png'), 'squat.jpg')).toEqual(unreadable);
    expect(await lookThrough(await photograph(60, 'webp'), 'squat.png')).toEqual(unreadable);
    const svg = '<svg xmlns="http://www.w3.org/2000/svg" width="80" height="60"><path d="M5 5h9"/></svg>';
    expect(await lookThrough(new TextEncoder().encode(svg), 'squat.png')).toEqual(unreadable);
    const png = await photograph(60, 'png');
    expect(await lookThrough(png.subarray(0, png.length - 200), 'squat.png')).toEqual(unreadable);
  });

  test('a small file that would unfold into more points than are worked on', async () => {
    const vast = await sharp({ create: { width: 9000, height: 7000, channels: 3, background: '#fff' } })
      .png()
      .toBuffer();
    expect(vast.length).toBeLessThan(1_000_000);
    expect(await lookThrough(vast, 'vast.png')).toEqual({ fault: 'too large', megapixels: 63 });
    expect(MOST_MEGAPIXELS).toBeLessThan(63);
  });
});
