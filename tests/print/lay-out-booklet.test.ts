/** Where words stand: on the grid, inside the page, in the tree's order, nothing over anything else. */
import { beforeAll, describe, expect, test } from 'vitest';
import type { Booklet } from '../../src/model/booklet.js';
import { clientId } from '../../src/model/identity.js';
import { drawBooklet } from '../../src/print/draw-booklet.js';
import { FOLDING_PAGES } from '../../src/print/fold-parts.js';
import { layOutBooklet, MOST_PAGES } from '../../src/print/lay-out-booklet.js';
import { loadFaces, measureWith } from '../../src/print/load-faces.js';
import type { Measure } from '../../src/print/measure.js';
import type { Page } from '../../src/print/page.js';
import { LINE } from '../../src/print/sheet.js';
import { fixtureBooklet, longNamesBooklet } from '../fixtures/booklet.js';
import { offTheGrid, offThePage, offTheTextBlock, overlaps } from './grid-faults.js';
import { partsOf } from './parts-of.js';
import { readPdf } from './read-pdf.js';
import { plain, taggedTexts, textsOn } from './tagged-text.js';

const CLIENT = clientId('rowan-ashby');
let measure: Measure;
beforeAll(async () => {
  measure = measureWith(await loadFaces());
});
const pagesOf = (booklet: Booklet): readonly Page[] => layOutBooklet(booklet, measure, CLIENT).value;
const bookmarked = (pages: readonly Page[], title: string): number =>
  pages.find((page) => page.bookmarks.some((mark) => mark.title === title))?.number ?? 0;

describe.each([
  ['an ordinary booklet', fixtureBooklet],
  ['words that are hard to fit', longNamesBooklet],
])('%s', (_, booklet) => {
  test('stands inside the page, clear of the trim', () => {
    expect(pagesOf(booklet).flatMap((page) => offThePage(page))).toEqual([]);
  });

  test('stands inside the text block', () => {
    expect(pagesOf(booklet).flatMap((page) => offTheTextBlock(page))).toEqual([]);
  });

  test('stands on the grid', () => {
    expect(pagesOf(booklet).flatMap((page) => offTheGrid(page, LINE / 2))).toEqual([]);
  });

  test('lays nothing over anything else', () => {
    expect(pagesOf(booklet).flatMap((page) => overlaps(page))).toEqual([]);
  });

  test('makes whole sheets', () => {
    const pages = pagesOf(booklet);
    expect(pages.length % 4).toBe(0);
    expect(pages.length).toBeLessThanOrEqual(FOLDING_PAGES);
    expect(pages.map((page) => page.number)).toEqual(pages.map((_page, i) => i + 1));
  });

  test('begins each session on a left-hand page', () => {
    const pages = pagesOf(booklet);
    const starts = partsOf(booklet, 'session').map((part) => bookmarked(pages, part.title));
    expect(starts.length).toBeGreaterThan(0);
    expect(starts.filter((page) => page === 0 || page % 2 === 1)).toEqual([]);
  });

  test('has no page with nothing on it', () => {
    const empty = pagesOf(booklet).filter((page) => !page.boxes.some((box) => box.kind === 'text' && box.tag));
    expect(empty.map((page) => page.number)).toEqual([]);
  });

  test('says every exercise page in the order it is written', () => {
    const pages = pagesOf(booklet);
    for (const part of partsOf(booklet, 'exercise')) {
      const from = pages.find((page) => page.targets.some(({ name }) => name === `exercise-${part.id}`))?.number ?? 0;
      const said = textsOn(pages, from, from + 1).map(({ text }) => text);
      const written = part.sections
        .filter(({ name }) => name === 'cues' || name === 'set-up' || name === 'breath' || name === 'faults')
        .flatMap(({ title, lines }) => [
          title,
          ...lines.map(({ text }) => plain(text.map((run) => run.text).join(''))),
        ]);
      let place = -1;
      for (const text of written.filter((one) => one !== '')) {
        place = said.indexOf(text, place + 1);
        expect(place, `"${text}" after the line before it on page ${from}`).toBeGreaterThanOrEqual(0);
      }
    }
  });

  test('refers to the page an exercise really stands on', () => {
    const pages = pagesOf(booklet);
    const links = pages.flatMap((page) =>
      page.boxes.flatMap((box) => (box.kind === 'text' && box.to && /^Page/.test(box.text) ? [box] : [])),
    );
    expect(links.length).toBeGreaterThan(3);
    for (const link of links) {
      const stands = pages.find((page) => page.targets.some((target) => target.name === link.to))?.number;
      expect(plain(link.text)).toBe(`Page ${stands}`);
    }
  });
});

test('an ordinary session stands on one opening, on the whole step of the grid', () => {
  const pages = pagesOf(fixtureBooklet);
  const [first, second] = partsOf(fixtureBooklet, 'session').map((part) => bookmarked(pages, part.title));
  expect(second).toBe((first ?? 0) + 2);
  const opening = pages.filter((page) => page.number === first || page.number === (first ?? 0) + 1);
  // The coach's line alone may stand half a line between its neighbours.
  const [session] = partsOf(fixtureBooklet, 'session');
  const coach = session?.workOnThis?.map((run) => run.text).join('') ?? '';
  expect(coach).not.toBe('');
  const off = opening.flatMap((page) => offTheGrid(page, LINE)).filter((fault) => !fault.includes(coach));
  expect(off).toEqual([]);
});

test('exercises done turn about stand on one page', () => {
  const texts = taggedTexts(pagesOf(fixtureBooklet));
  const page = (name: string): number | undefined =>
    texts.find(({ text, role }) => text === name && role === 'P')?.page;
  expect(page('Push-up')).toBeDefined();
  expect(page('Push-up')).toBe(page('Dead bug'));
});

describe('more pages than fold', () => {
  const exercises = partsOf(fixtureBooklet, 'exercise');
  const longer = (times: number): Booklet => ({
    ...fixtureBooklet,
    parts: [...fixtureBooklet.parts, ...Array.from({ length: times }, () => exercises).flat()],
  });
  const warned = { code: 'too-many-pages', severity: 'warning', scope: { kind: 'client', client: CLIENT } };

  test('are laid out with a warning, to be stapled in two parts', () => {
    const { value, problems } = layOutBooklet(longer(3), measure, CLIENT);
    expect(value.length).toBeGreaterThan(FOLDING_PAGES);
    expect(value.length).toBeLessThanOrEqual(MOST_PAGES);
    expect(value.length % 4).toBe(0);
    expect(problems).toEqual([{ ...warned, data: { pages: value.length, most: FOLDING_PAGES, drawn: true } }]);
  });

  test('are drawn', async () => {
    const { value, problems } = await drawBooklet(longer(3), CLIENT);
    expect(problems).toMatchObject([warned]);
    const [pages] = problems.flatMap(({ code, data }) =>
      code === 'too-many-pages' && 'pages' in data ? [data.pages] : [],
    );
    expect((await readPdf(value ?? new Uint8Array())).pages.length).toBe(pages);
  });

  test('are no booklet at all beyond two folded ones', async () => {
    const { value, problems } = await drawBooklet(longer(9), CLIENT);
    expect(value).toBeNull();
    expect(problems).toMatchObject([{ ...warned, data: { drawn: false } }]);
  });
});

test('the tree is not touched', () => {
  const before = JSON.stringify(fixtureBooklet);
  pagesOf(fixtureBooklet);
  expect(JSON.stringify(fixtureBooklet)).toBe(before);
});
