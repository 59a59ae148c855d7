/** Parts larger than anyone writes them: still on the page, still all there. */
import { beforeAll, expect, test } from 'vitest';
import type { Booklet, Part } from '../../src/model/booklet.js';
import { clientId, sessionId } from '../../src/model/identity.js';
import { plainLine } from '../../src/model/prose.js';
import { layOutBooklet } from '../../src/print/lay-out-booklet.js';
import { loadFaces, measureWith } from '../../src/print/load-faces.js';
import type { Measure } from '../../src/print/measure.js';
import type { Page } from '../../src/print/page.js';
import { mm } from '../../src/print/sheet.js';
import { fixtureBooklet } from '../fixtures/booklet.js';
import { gridFaults } from './grid-faults.js';
import { taggedTexts } from './tagged-text.js';

let measure: Measure;
beforeAll(async () => {
  measure = measureWith(await loadFaces());
});

const changed = (change: (part: Part) => Part): Booklet => ({
  ...fixtureBooklet,
  parts: fixtureBooklet.parts.map(change),
});
const laidOut = (booklet: Booklet): readonly Page[] => layOutBooklet(booklet, measure, clientId('x')).value;
const LONG = 'A sign that goes on for longer than one line of this narrow page is wide, and then a little longer.';

test('sixty stop signs stand in more than one frame, each signed', () => {
  const pages = laidOut(
    changed((part) =>
      part.kind === 'safety'
        ? { ...part, emergency: Array.from({ length: 60 }, (_, i) => plainLine(`${i}. ${LONG}`)) }
        : part,
    ),
  );
  expect(gridFaults(pages)).toEqual([]);
  expect(taggedTexts(pages).filter(({ text }) => text.endsWith(LONG)).length).toBe(60);
  expect(
    pages.flatMap((page) => page.boxes.filter((box) => box.kind === 'frame' && box.height > 300)).length,
  ).toBeGreaterThan(1);
});

test('a week of seven sessions is a list of dates and names', () => {
  const pages = laidOut(
    changed((part) =>
      part.kind === 'calendar'
        ? {
            ...part,
            weeks: part.weeks.map((week) => ({
              ...week,
              sessions: Array.from({ length: 7 }, (_, i) => ({
                session: sessionId(`s${i}`),
                name: `Session ${i}: ${LONG}`,
                date: '2027-01-04',
                dateText: `Day ${i}`,
                occurrence: i + 1,
              })),
            })),
          }
        : part,
    ),
  );
  expect(gridFaults(pages)).toEqual([]);
  expect(taggedTexts(pages).filter(({ text }) => text.endsWith(LONG)).length).toBe(42);
});

test('a key with long words is said to its end', () => {
  const pages = laidOut(
    changed((part) =>
      part.kind === 'how-to' ? { ...part, key: part.key.map((one) => ({ ...one, text: LONG })) } : part,
    ),
  );
  expect(gridFaults(pages)).toEqual([]);
  expect(taggedTexts(pages).filter(({ text }) => text === LONG).length).toBe(5);
});

test('a record of ninety lines has ninety, 8 mm apart on each page', () => {
  const pages = laidOut(changed((part) => (part.kind === 'record' ? { ...part, lines: 90, title: 'Ninety' } : part)));
  const first = pages.find((page) => page.bookmarks.some(({ title }) => title === 'Ninety'))?.number ?? 0;
  const rules = pages
    .filter((page) => page.number >= first && page.number < first + 5)
    .map((page) => page.boxes.flatMap((box) => (box.kind === 'line' ? [box.y] : [])));
  const own = rules.slice(0, 5).flat();
  expect(own.length).toBeGreaterThanOrEqual(90);
  for (const ys of rules) {
    ys.slice(1).forEach((y, i) => {
      expect(y - (ys[i] ?? 0)).toBeCloseTo(mm(8), 4);
    });
  }
  expect(gridFaults(pages)).toEqual([]);
});

test('a booklet of nothing but a cover is one sheet', () => {
  const pages = laidOut({ ...fixtureBooklet, parts: fixtureBooklet.parts.filter((part) => part.kind === 'cover') });
  expect(pages.length).toBe(4);
  expect(gridFaults(pages)).toEqual([]);
});

test('a session without rows is still an opening', () => {
  const pages = laidOut(changed((part) => (part.kind === 'session' ? { ...part, rows: [] } : part)));
  expect(gridFaults(pages)).toEqual([]);
  expect(pages.length % 4).toBe(0);
});
