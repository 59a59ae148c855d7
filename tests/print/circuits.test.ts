/** What is done turn about stands on one page, or on one opening where no page holds it: no leaf is turned in it. */
import { beforeAll, describe, expect, test } from 'vitest';
import type { Booklet, SessionPart } from '../../src/model/booklet.js';
import { clientId, rowId } from '../../src/model/identity.js';
import { layOutBooklet } from '../../src/print/lay-out-booklet.js';
import { loadFaces, measureWith } from '../../src/print/load-faces.js';
import type { Measure } from '../../src/print/measure.js';
import type { Page } from '../../src/print/page.js';
import { fixtureBooklet } from '../fixtures/booklet.js';
import { demoBooklet } from '../studio/demo-booklet.js';
import { offThePage, offTheTextBlock, overlaps } from './grid-faults.js';
import { partsOf } from './parts-of.js';
import { plain, taggedTexts } from './tagged-text.js';

let measure: Measure;
beforeAll(async () => {
  measure = measureWith(await loadFaces());
});

const lettersOf = (text: string): string => text.replaceAll(/[^\p{L}\p{N}]+/gu, '');

const pagesOf = (booklet: Booklet): readonly Page[] => layOutBooklet(booklet, measure, clientId('x')).value;

/** The pages that the rows of each circuit begin on; every session is told by its running foot. */
function circuitsOn(pages: readonly Page[], session: SessionPart): readonly (readonly number[])[] {
  const own = pages.filter(({ boxes }) =>
    boxes.some((box) => box.kind === 'text' && box.tag === undefined && plain(box.text) === plain(session.title)),
  );
  const pageOf = (name: string): number =>
    own.find(({ boxes }) =>
      boxes.some((box) => box.kind === 'text' && box.style === 'exercise' && plain(name).startsWith(plain(box.text))),
    )?.number ?? Number.NaN;
  const circuits: { group: string; on: number[] }[] = [];
  for (const { name, group } of session.rows) {
    const last = circuits.at(-1);
    if (last && last.group === group && group !== '') last.on.push(pageOf(name));
    else circuits.push({ group, on: [pageOf(name)] });
  }
  return circuits.filter(({ group }) => group !== '').map(({ on }) => on);
}

/** A leaf is turned from a right page to a left one. */
const leaves = (on: readonly number[]): number => new Set(on.map((page) => Math.floor(page / 2))).size;

const [first] = partsOf(fixtureBooklet, 'session');
const BOTH = ['Push-up', 'Dead bug'];

/** The fixture's first session with more before its circuit than an opening holds, and a circuit of so many rows. */
function longSession(before: number, times: number): SessionPart {
  if (!first) throw new Error('the fixture has no session');
  const alone = first.rows.filter(({ group }) => group === '');
  const joined = first.rows.filter(({ name }) => BOTH.includes(name));
  const rows = [
    ...Array.from({ length: before }, (_, i) => alone[i % alone.length]),
    ...Array.from({ length: times }, () => joined).flat(),
  ].flatMap((row, i) => (row ? [{ ...row, row: rowId(`row-${i}`), name: `${i + 1} ${row.name}` }] : []));
  return { ...first, rows };
}

test.each([5, 6, 7, 8, 9, 10, 11, 12])('a circuit of two after %i exercises stands on one page', (before) => {
  const session = longSession(before, 1);
  const parts = fixtureBooklet.parts.map((part) => (part.kind === 'session' && part.id === 'a' ? session : part));
  const pages = pagesOf({ ...fixtureBooklet, parts });
  const circuits = circuitsOn(pages, session);
  expect(circuits).toHaveLength(1);
  for (const on of circuits) expect(new Set(on).size).toBe(1);
  expect(pages.flatMap((page) => overlaps(page))).toEqual([]);
});

// After ten the left page is full: rather than an empty right one, the circuit begins there.
test.each([8, 9, 11, 12])('one that no page holds, after %i exercises, stands on one opening', (before) => {
  const session = longSession(before, 3);
  const parts = fixtureBooklet.parts.map((part) => (part.kind === 'session' && part.id === 'a' ? session : part));
  const circuits = circuitsOn(pagesOf({ ...fixtureBooklet, parts }), session);
  expect(circuits).toHaveLength(1);
  for (const on of circuits) {
    expect(new Set(on).size).toBe(2);
    expect(leaves(on)).toBe(1);
  }
});

describe('a client with long sessions', () => {
  let booklet: Booklet;
  let pages: readonly Page[];
  beforeAll(async () => {
    booklet = await demoBooklet('nell-fane');
    pages = pagesOf(booklet);
  });

  test('turns no leaf in a circuit', () => {
    const circuits = partsOf(booklet, 'session').flatMap((session) => circuitsOn(pages, session));
    expect(circuits.length).toBeGreaterThan(0);
    expect(circuits.filter((on) => leaves(on) > 1)).toEqual([]);
    expect(pages.flatMap((page) => [...overlaps(page), ...offThePage(page), ...offTheTextBlock(page)])).toEqual([]);
  });

  test('has each of them on one opening, with all that is asked and all that follows from it', () => {
    const sessions = partsOf(booklet, 'session');
    const starts = sessions.map(
      ({ title }) => pages.find(({ bookmarks }) => bookmarks.some((one) => one.title === title))?.number ?? 0,
    );
    expect(starts).toEqual(starts.map((_, i) => (starts[0] ?? 0) + 2 * i));
    let asked = 0;
    for (const [i, { rows }] of sessions.entries()) {
      const opening = pages.filter(({ number }) => Math.floor(number / 2) === (starts[i] ?? 0) / 2);
      const said = lettersOf(
        taggedTexts(opening)
          .map(({ text }) => text)
          .join(' '),
      );
      for (const { choose } of rows.flatMap(({ cells }) => cells)) {
        if (choose === undefined) continue;
        asked += 1;
        for (const text of [choose.intro, choose.note ?? '', ...choose.rows.map(({ use }) => use)]) {
          expect(said).toContain(lettersOf(text));
        }
      }
    }
    expect(asked).toBeGreaterThan(10);
  });
});
