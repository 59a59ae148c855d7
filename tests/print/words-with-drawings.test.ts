/** A drawing takes no word from a page, and never pushes the stop signs of an exercise further from its first words. */
import { expect, test } from 'vitest';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import { drawLibrary } from '../../src/figures/draw-library.js';
import type { Booklet } from '../../src/model/booklet.js';
import { clientId } from '../../src/model/identity.js';
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

/** How many pages name an exercise at their foot. */
const footed = (pages: readonly Page[], title: string): number =>
  pages.filter(({ boxes }) =>
    boxes.some((box) => box.kind === 'text' && box.tag === undefined && box.style === 'label' && box.text === title),
  ).length;

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
    // None is parted that stands on one page without its drawing.
    for (const { title } of partsOf(booklet, 'exercise'))
      expect(footed(pages, title), title).toBeLessThanOrEqual(Math.max(1, footed(barePages, title)));
    expect(unsaid(barePages, booklet)).toEqual([]);
    expect(unsaid(pages, booklet)).toEqual([]);
    const shown = new Set(
      pages.flatMap(({ boxes }) => boxes.flatMap((box) => (box.kind === 'picture' ? [box.tag] : []))),
    );
    expect(shown.size).toBeGreaterThan(partsOf(booklet, 'exercise').length * 0.6);
  },
  60_000,
);
