/** A movement on twelve leaves: out and back by its tempo, nothing over a cut, nothing but black on white. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
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
    expect(execFileSync('qpdf', ['--check', file], { encoding: 'utf8' })).toContain(
      'No syntax or stream encoding errors',
    );
  } finally {
    rmSync(folder, { recursive: true });
  }
});
