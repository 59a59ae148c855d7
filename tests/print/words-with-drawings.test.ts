/**
 * A drawing takes no word from a page, and never pushes the stop signs of an exercise further from its first words: what has no
 * room for it before them has it after them.
 */
import { expect, test } from 'vitest';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import { drawLibrary } from '../../src/figures/draw-library.js';
import type { Booklet } from '../../src/model/booklet.js';
import { clientId, exerciseId } from '../../src/model/identity.js';
import { plainText } from '../../src/model/prose.js';
import { layOutBooklet, type Pictures } from '../../src/print/lay-out-booklet.js';
import { picturesOf } from '../../src/print/lay-out-picture.js';
import { loadFaces, measureWith } from '../../src/print/load-faces.js';
import type { Page } from '../../src/print/page.js';
import { exerciseTarget } from '../../src/print/setting.js';
import { A4_LARGE_SHEET, A5_SHEET, HALF_LETTER_SHEET, LETTER_LARGE_SHEET, LINE } from '../../src/print/sheet.js';
import { planDemo } from '../studio/demo-plans.js';
import { offTheGrid, offThePage, offTheTextBlock, overlaps, strandedHeads } from './grid-faults.js';
import { partsOf } from './parts-of.js';
import { taggedTexts } from './tagged-text.js';

const demo = await planDemo();
const drawings = drawLibrary(demo.library.exercises);
const measure = measureWith(await loadFaces());
const pictures: Pictures = new Map(
  [...drawings].map(([id, drawn]) => [id, picturesOf(drawn, 'as drawn', measure.sheet)] as const),
);

/** Sections whose lines stand on paper as they were written. */
const SAID_WHOLE: readonly string[] = ['set-up', 'pick up', 'put down', 'cues', 'breath', 'partner'];

function bookletOf(name: string): { readonly booklet: Booklet; readonly lay: (of?: Pictures) => readonly Page[] } {
  const client = demo.clients.find(({ id }) => id === name);
  const plan = client && demo.plans.get(client.id);
  if (!client || !plan) throw new Error(`${name} has no plan`);
  const booklet = composeBooklet({ library: demo.library, client, plan });
  return { booklet, lay: (of) => layOutBooklet(booklet, measure, client.id, undefined, of).value };
}

/** How many pages after its first words an exercise's frame of stop signs stands. */
function apart(pages: readonly Page[], { parts }: Booklet): ReadonlyMap<string, number> {
  const exercises = parts.filter((part) => part.kind === 'exercise').filter(({ stop }) => stop.length > 0);
  return new Map(
    exercises.map(({ id }) => {
      const from = pages.findIndex(({ targets }) => targets.some(({ name }) => name === exerciseTarget(id)));
      const top = pages[from]?.targets.find(({ name }) => name === exerciseTarget(id))?.y ?? 0;
      const at = pages.findIndex(
        ({ boxes }, index) =>
          index >= from && boxes.some((box) => box.kind === 'frame' && (index > from || box.y > top)),
      );
      return [id, at - from] as const;
    }),
  );
}

const lettersOf = (text: string): string => text.replaceAll(/[^\p{L}\p{N}]+/gu, '');

/** What is said of how an exercise is done that is read on no page. */
function unsaid(pages: readonly Page[], booklet: Booklet): readonly string[] {
  const read = lettersOf(
    taggedTexts(pages)
      .map(({ text }) => text)
      .join(''),
  );
  const lines = partsOf(booklet, 'exercise').flatMap(({ description, sections, stop }) => [
    ...description,
    ...sections
      .filter(({ name }) => SAID_WHOLE.includes(name))
      .flatMap((section) => section.lines.map(({ text }) => text)),
    ...stop,
  ]);
  return lines.map(plainText).filter((line) => !read.includes(lettersOf(line)));
}

test.each([A5_SHEET, HALF_LETTER_SHEET, A4_LARGE_SHEET, LETTER_LARGE_SHEET])(
  'drawn on $name, nothing leaves the page, the block or the grid, nothing covers anything else, and no head stands alone',
  async (sheet) => {
    const own = measureWith(await loadFaces(), sheet);
    const { booklet } = bookletOf('rowan-ashby');
    const shown = new Map([...drawings].map(([id, one]) => [id, picturesOf(one, 'as drawn', own.sheet)] as const));
    const { value: pages } = layOutBooklet(booklet, own, clientId('rowan-ashby'), undefined, shown);
    expect(pages.flatMap(({ boxes }) => boxes).filter(({ kind }) => kind === 'picture').length).toBeGreaterThan(10);
    const faults = pages.flatMap((page) => [
      ...offThePage(page, sheet),
      ...offTheTextBlock(page, sheet),
      ...offTheGrid(page, LINE / 2, sheet),
      ...overlaps(page, sheet),
      ...strandedHeads(page),
    ]);
    expect(faults).toEqual([]);
  },
  60_000,
);

test.each(['rowan-ashby', 'maud-ferrier', 'torben-slade'])(
  '%s',
  (name) => {
    const { booklet, lay } = bookletOf(name);
    const barePages = lay();
    const bare = apart(barePages, booklet);
    const pages = lay(pictures);
    const drawn = apart(pages, booklet);
    expect(bare.size).toBeGreaterThan(10);
    for (const [id, far] of drawn) expect(far, id).toBeLessThanOrEqual(bare.get(id) ?? 0);
    const starts = partsOf(booklet, 'session').map(
      ({ title }) => pages.find(({ bookmarks }) => bookmarks.some((one) => one.title === title))?.number ?? 0,
    );
    expect(starts).toEqual(starts.map((_, i) => (starts[0] ?? 0) + 2 * i));
    expect(unsaid(barePages, booklet)).toEqual([]);
    expect(unsaid(pages, booklet)).toEqual([]);
    const shown = new Set(
      pages.flatMap(({ boxes }) => boxes.flatMap((box) => (box.kind === 'picture' ? [box.tag] : []))),
    );
    expect(shown.size).toBe(partsOf(booklet, 'exercise').filter(({ id }) => pictures.has(id)).length);
  },
  60_000,
);

/** Where something of an exercise stands: lines from the top of its first page, all pages one under the other. */
type Height = number;

function heightsOf(
  pages: readonly Page[],
  id: string,
): { readonly picture: Height; readonly stop: Height; readonly first: number } {
  const from = pages.findIndex(({ targets }) => targets.some(({ name }) => name === id));
  const top = pages[from]?.targets.find(({ name }) => name === id)?.y ?? 0;
  const heightOf = (kind: 'picture' | 'frame'): Height => {
    const found = pages
      .slice(from)
      .flatMap(({ boxes }, i) =>
        boxes.flatMap((box) =>
          box.kind === kind && (i > 0 || box.y > top - LINE) ? [i * A5_SHEET.paper.height + box.y] : [],
        ),
      );
    return Math.min(...found);
  };
  return { picture: heightOf('picture'), stop: heightOf('frame'), first: A5_SHEET.paper.height };
}

test('where the words fill a page the drawing stands on the next, under the stop signs, before all else', () => {
  const { booklet, lay } = bookletOf('nell-fane');
  const id = exerciseTarget(exerciseId('goblet-squat'));
  const { picture, stop, first } = heightsOf(lay(pictures), id);
  expect(stop).toBeLessThan(first);
  expect(picture).toBeGreaterThan(first);
  expect(picture).toBeLessThan(first + A5_SHEET.head + 2 * LINE);
  // One with room stays as it was.
  const roomy = exerciseTarget(exerciseId('reaching-squat'));
  expect(partsOf(booklet, 'exercise').map((part) => part.id)).toContain('reaching-squat');
  const there = heightsOf(lay(pictures), roomy);
  expect(there.picture).toBeLessThan(there.stop);
});

/** Exercises whose stop signs stand on the page after their first words, by the number of the first. */
function partedFromStops(pages: readonly Page[], booklet: Booklet): readonly number[] {
  const begins = (id: string): number =>
    pages.find(({ targets }) => targets.some(({ name }) => name === exerciseTarget(exerciseId(id))))?.number ?? 0;
  return [...apart(pages, booklet)].flatMap(([id, after]) => (after === 1 ? [begins(id)] : []));
}

test('no leaf is turned between what to do and when to stop where a page of notes before it costs no sheet', () => {
  const { booklet, lay } = bookletOf('imre-fane');
  const pages = lay(pictures);
  const parted = partedFromStops(pages, booklet);
  expect(parted.length).toBeGreaterThan(0);
  expect(parted.filter((first) => first % 2 > 0)).toEqual([]);
  // A right-hand page of notes in the midst of the exercises, and no sheet for it: others at the end are left.
  const notes = pages.filter(({ boxes }) =>
    boxes.some((box) => box.kind === 'text' && box.tag === undefined && box.text === 'Notes'),
  );
  expect(notes.map(({ number }) => number)).toContain((parted[0] ?? 0) - 1);
  expect(notes.at(-1)?.number).toBe(pages.length);
});

test('nor in large print, which is not folded', async () => {
  const own = measureWith(await loadFaces(), A4_LARGE_SHEET);
  const { booklet } = bookletOf('ansel-quill');
  const shown = new Map([...drawings].map(([id, one]) => [id, picturesOf(one, 'as drawn', own.sheet)] as const));
  const { value: pages } = layOutBooklet(booklet, own, clientId('ansel-quill'), undefined, shown);
  const parted = partedFromStops(pages, booklet);
  expect(parted.length).toBeGreaterThan(5);
  expect(parted.filter((first) => first % 2 > 0)).toEqual([]);
});
