/** A movement on twelve leaves: out and back by its tempo, nothing over a cut, nothing but black on white. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { flickFrames } from '../../src/figures/flick-frames.js';
import type { Tempo } from '../../src/model/exercise.js';
import type { Picture } from '../../src/model/picture.js';
import type { Pose } from '../../src/model/pose.js';
import { drawFlickBook } from '../../src/print/draw-flick-book.js';
import { standing } from '../fixtures/drawn.js';
import { exercise } from '../fixtures/library.js';
import { readPdf, tagsOf } from './read-pdf.js';

const neither = <Value>(value: Value) => ({ left: value, right: value });
const POSES: readonly Pose[] = [standing('start'), { ...standing('bottom'), trunk: { lean: 30 }, knees: neither(100) }];

function leavesAt(tempo: Tempo): readonly Picture[] {
  const { facts } = exercise('sink', 'Sink', {}, {});
  return flickFrames({ poses: POSES, facts: { ...facts, tempo } });
}

/** The top of the head, in centimetres. */
function crownOf({ marks }: Picture): number {
  const heights = marks.flatMap(({ outline }) => outline.flatMap((one) => (one.kind === 'close' ? [] : [one.to[1]])));
  return Math.max(...heights);
}

test('the first position comes first, the last one once, and slow ways have more leaves', () => {
  const leaves = leavesAt({ lower: 4, bottom: 0, lift: 2, top: 0 });
  expect(leaves).toHaveLength(12);
  const crowns = leaves.map(crownOf);
  const lowest = crowns.indexOf(Math.min(...crowns));
  expect(crowns.indexOf(Math.max(...crowns))).toBe(0);
  // 4 seconds of 6 down.
  expect(lowest).toBe(8);
  for (const [i, crown] of crowns.slice(1, lowest + 1).entries()) expect(crown).toBeLessThan(crowns[i] ?? 0);
  for (const [i, crown] of crowns.slice(lowest + 1).entries()) expect(crown).toBeGreaterThan(crowns[lowest + i] ?? 0);
  const even = leavesAt({ lower: 2, bottom: 0, lift: 2, top: 0 }).map(crownOf);
  expect(even.indexOf(Math.min(...even))).toBe(6);
  const [first] = leaves;
  expect(new Set(leaves.map(({ box }) => JSON.stringify(box)))).toEqual(new Set([JSON.stringify(first?.box)]));
});

test('one position alone does not move', () => {
  const { facts } = exercise('stand', 'Stand', {}, {});
  expect(flickFrames({ poses: [standing('start')], facts })).toEqual([]);
});

/** Millimetres from the sheet's upper left corner: ten at each edge where no printer prints, sixteen for the words. */
const cutsOf = (width: number, height: number) => ({
  top: 26,
  bottom: height - 10,
  down: [10, 10 + (width - 20) / 3, 10 + ((width - 20) * 2) / 3, width - 10] as const,
  across: [0, 1, 2, 3, 4].map((row) => 26 + (row * (height - 36)) / 4),
});
const CUTS = { a4: cutsOf(210, 297), letter: cutsOf(215.9, 279.4) } as const;

/** At ten points a millimetre. */
function readColours(file: string) {
  const bytes = readFileSync(file);
  const head = /^P6\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 40).toString('latin1'));
  if (head === null) throw new Error('no picture in colours');
  const pixels = bytes.subarray(head[0].length);
  const width = Number(head[1]);
  let coloured = 0;
  for (let i = 0; i < pixels.length; i += 3)
    if (pixels[i] !== pixels[i + 1] || pixels[i] !== pixels[i + 2]) coloured += 1;
  /** The share that is not white, but for two millimetres about each row. */
  const inkIn = (
    from: readonly [number, number],
    to: readonly [number, number],
    but: readonly number[] = [],
  ): number => {
    let [inked, all] = [0, 0];
    for (let y = Math.round(from[1] * 10); y < to[1] * 10; y += 1) {
      if (but.some((row) => Math.abs(row * 10 - y) < 20)) continue;
      for (let x = Math.round(from[0] * 10); x < to[0] * 10; x += 1) {
        all += 1;
        if ((pixels[3 * (y * width + x)] ?? 0) < 250) inked += 1;
      }
    }
    return inked / all;
  };
  return { coloured, inkIn };
}

test.each(['a4', 'letter'] as const)('a sheet of %s: one page, one figure, told in words', async (paper) => {
  const leaves = leavesAt({ lower: 3, bottom: 1, lift: 1, top: 0 });
  const book = { exercise: 'Sink', alt: 'Standing, then low', leaves, paper };
  const info = { author: 'Studio', language: 'en', date: '2026-11-29' };
  const bytes = await drawFlickBook(book, info);
  expect(await drawFlickBook(book, info)).toEqual(bytes);
  const read = await readPdf(bytes);
  expect(read.pages).toHaveLength(1);
  const [page] = read.pages;
  if (!page) throw new Error('no page');
  expect(page.stray).toBe('');
  expect(tagsOf(page.tags, 'Figure').map(({ alt }) => alt)).toEqual(['Standing, then low']);
  expect(page.furniture.split(' ')).toEqual(Array.from({ length: 12 }, (_, i) => String(i + 1)));
  const folder = mkdtempSync(join(tmpdir(), 'flick-'));
  try {
    const file = join(folder, 'flick.pdf');
    writeFileSync(file, bytes);
    const cuts = CUTS[paper];
    execFileSync('pdftoppm', ['-r', '254', '-singlefile', file, join(folder, 'sheet')]);
    const sheet = readColours(join(folder, 'sheet.ppm'));
    expect(sheet.coloured).toBe(0);
    for (const x of cuts.down) {
      expect(sheet.inkIn([x - 0.3, cuts.top], [x + 0.3, cuts.bottom]), `a cut at ${x} mm`).toBeGreaterThan(0.05);
      expect(sheet.inkIn([x - 2, cuts.top + 2], [x - 0.7, cuts.bottom - 2], cuts.across), `left of ${x} mm`).toBe(0);
      expect(sheet.inkIn([x + 0.7, cuts.top + 2], [x + 2, cuts.bottom - 2], cuts.across), `right of ${x} mm`).toBe(0);
    }
    for (const y of cuts.across) {
      for (const [above, below] of [
        [y - 2, y - 0.7],
        [y + 0.7, y + 2],
      ] as const) {
        for (const [i, x] of cuts.down.slice(0, -1).entries())
          expect(sheet.inkIn([x + 2, above], [(cuts.down[i + 1] ?? x) - 2, below]), `beside ${y} mm`).toBe(0);
      }
    }
    // What is between the cuts is a figure.
    expect(sheet.inkIn([cuts.down[0] + 20, cuts.top + 5], [cuts.down[1] - 5, cuts.top + 55])).toBeGreaterThan(0.02);
    expect(execFileSync('qpdf', ['--check', file], { encoding: 'utf8' })).toContain(
      'No syntax or stream encoding errors',
    );
  } finally {
    rmSync(folder, { recursive: true });
  }
});
