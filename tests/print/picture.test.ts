/** A picture over an exercise's words: as high as it asks, on the grid, read by its own words, and nothing of the page lost. */
import { beforeAll, expect, test } from 'vitest';
import { exerciseSections } from '../../src/print/exercise-sections.js';
import { blocksLines } from '../../src/print/lay-out-blocks.js';
import { layOutExercise, wordsOf } from '../../src/print/lay-out-exercise.js';
import { fillPages, placePages } from '../../src/print/lay-out-pages.js';
import { layOutNotesPage } from '../../src/print/lay-out-record.js';
import { loadFaces, measureWith } from '../../src/print/load-faces.js';
import type { Page } from '../../src/print/page.js';
import { type Picture, type Setting, settingOf } from '../../src/print/setting.js';
import { LINE } from '../../src/print/sheet.js';
import { fixtureBooklet } from '../fixtures/booklet.js';
import { offTheGrid, offThePage, offTheTextBlock, overlaps } from './grid-faults.js';
import { partsOf } from './parts-of.js';
import { taggedTexts } from './tagged-text.js';

const [part] = partsOf(fixtureBooklet, 'exercise');
let setting: Setting;
beforeAll(async () => {
  setting = settingOf(fixtureBooklet, measureWith(await loadFaces()), false);
});

const picture = (lines: number, stands: Picture['stands'] = 'over'): Picture => {
  const width = stands === 'over' ? setting.measure.sheet.textWidth : 100;
  return {
    stands,
    width,
    lines,
    alt: 'Sitting between the heels, seen from the side',
    draw: (tag) => [{ kind: 'line', x: 0, y: 0, toX: width, toY: lines * LINE, thickness: 1, tag }],
  };
};

/** As wide as a drawing beside words is, and taken for one. */
const beside = (lines: number): Picture => ({
  ...picture(lines, 'beside'),
  draw: (tag) => [
    {
      kind: 'picture',
      x: 0,
      y: 0,
      width: 100,
      height: lines * LINE,
      plane: { left: 0, right: 100, low: 0, high: 100 },
      layers: [],
      tag,
    },
  ],
});

function pagesWith(shown?: Picture): readonly Page[] {
  if (!part) throw new Error('the fixture has no exercise');
  const chapter = layOutExercise(part, setting, wordsOf(part, setting, shown, exerciseSections(part, setting)));
  const { linesOnPage } = setting.measure.sheet;
  return placePages(fillPages([chapter], layOutNotesPage(setting), linesOnPage), setting.measure);
}

test.each([6, 10, 16])('%i lines high', (lines) => {
  const pages = pagesWith(picture(lines));
  const faults = pages.flatMap((page) => [
    ...offThePage(page),
    ...offTheTextBlock(page),
    ...offTheGrid(page, LINE / 2),
    ...overlaps(page),
  ]);
  expect(faults).toEqual([]);
  const [drawn] = pages.flatMap(({ boxes }) =>
    boxes.filter((box) => box.kind === 'line' && box.tag?.role === 'Figure'),
  );
  if (drawn?.kind !== 'line') throw new Error('no picture');
  expect(drawn.toY - drawn.y).toBeCloseTo(lines * LINE);
  expect(drawn.toX - drawn.x).toBeCloseTo(setting.measure.sheet.textWidth);
  expect(drawn.tag?.alt).toBe('Sitting between the heels, seen from the side');
  // No word stands in its field.
  const inField = pages[0]?.boxes.filter((box) => box.kind === 'text' && box.y > drawn.y && box.y < drawn.toY) ?? [];
  expect(inField).toEqual([]);
});

test.each([4, 8, 13, 20])('%i lines high beside the words, which keep clear of it', (lines) => {
  const pages = pagesWith(beside(lines));
  const faults = pages.flatMap((page) => [
    ...offThePage(page),
    ...offTheTextBlock(page),
    ...offTheGrid(page, LINE / 2),
    ...overlaps(page),
  ]);
  expect(faults).toEqual([]);
  const drawn = pages[0]?.boxes.filter(({ kind }) => kind === 'picture') ?? [];
  expect(drawn).toHaveLength(1);
  // What it sends over to a page of its own may leave room there for notes; a list that runs on has no dashes.
  const texts = (of: readonly Page[]): readonly string[] =>
    taggedTexts(of).flatMap(({ text }) => (text === setting.labels.notes || text === '–' ? [] : [text]));
  expect(texts(pages)).toEqual(texts(pagesWith()));
});

test('what lies over words would be found', () => {
  const [page] = pagesWith(beside(8));
  const word = page?.boxes.find((box) => box.kind === 'text' && box.tag !== undefined);
  const drawn = page?.boxes.find((box) => box.kind === 'picture');
  if (!page || word?.kind !== 'text' || drawn?.kind !== 'picture') throw new Error('no words, or no picture');
  const withBox = (box: Page['boxes'][number]): readonly string[] => overlaps({ ...page, boxes: [...page.boxes, box] });
  const { x, y, width } = word;
  expect(overlaps(page)).toEqual([]);
  expect(withBox({ ...drawn, x, y: y - 5 })).not.toEqual([]);
  expect(withBox({ ...drawn, x: drawn.x + 20 })).not.toEqual([]);
  expect(withBox({ kind: 'line', x, y: y - 3, toX: x + width, toY: y - 3, thickness: 0.5 })).not.toEqual([]);
  expect(withBox({ kind: 'frame', x: x + 3, y: y - 30, width: 200, height: 60, thickness: 0.5 })).not.toEqual([]);
  expect(withBox({ kind: 'frame', x: x - 8, y: y - 30, width: 900, height: 900, thickness: 0.5 })).toEqual([]);
});

test('every word is said with it as without it, in the same order', () => {
  const texts = (pages: readonly Page[]): readonly string[] => taggedTexts(pages).map(({ text }) => text);
  expect(texts(pagesWith(picture(12)))).toEqual(texts(pagesWith()));
  if (!part) throw new Error('the fixture has no exercise');
  const height = (shown?: Picture): number =>
    blocksLines(layOutExercise(part, setting, wordsOf(part, setting, shown, exerciseSections(part, setting))).blocks);
  expect(height(picture(12))).toBeGreaterThan(height());
});
