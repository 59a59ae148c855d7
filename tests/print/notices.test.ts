/** Notices on the paper cover: on the page and its grid, before whose booklet it is, and alone once withdrawn. */
import { beforeAll, describe, expect, test } from 'vitest';
import { composeEnded, composeWithdrawn } from '../../src/booklet/compose-changes.js';
import type { Booklet, Notice } from '../../src/model/booklet.js';
import { clientId } from '../../src/model/identity.js';
import { layOutBooklet } from '../../src/print/lay-out-booklet.js';
import { loadFaces, measureWith } from '../../src/print/load-faces.js';
import type { Measure } from '../../src/print/measure.js';
import type { Page, TextBox } from '../../src/print/page.js';
import { fixtureBooklet } from '../fixtures/booklet.js';
import { gridFaults } from './grid-faults.js';

let measure: Measure;
beforeAll(async () => {
  measure = measureWith(await loadFaces());
});
const laidOut = (booklet: Booklet): readonly Page[] => layOutBooklet(booklet, measure, clientId('x')).value;
const textOn = (page: Page | undefined): string =>
  (page?.boxes ?? [])
    .filter((box): box is TextBox => box.kind === 'text')
    .map(({ text }) => text)
    .join(' ')
    .replaceAll('\u00a0', ' ');
const withNotice = (notice: Notice): Booklet => ({
  ...fixtureBooklet,
  parts: fixtureBooklet.parts.map((part) => (part.kind === 'cover' ? { ...part, notice } : part)),
});

describe('on the paper cover', () => {
  test.each([1, 2, 3])('%i sentences of changes stand before the title, and no page is added', (count) => {
    const sentence = 'From Thu 3 Dec the push-up from the knees has fewer reps, because your knee was sore.';
    const lines = Array.from({ length: count }, () => sentence);
    const pages = laidOut(withNotice({ kind: 'changes', title: 'Edition 2, 3 December 2026', lines }));
    expect(gridFaults(pages)).toEqual([]);
    expect(pages).toHaveLength(laidOut(fixtureBooklet).length);
    const cover = textOn(pages[0]);
    expect(cover.indexOf('Edition 2, 3 December 2026')).toBe(0);
    expect(cover).toContain('not medical advice');
    // Between two fine rules.
    expect(pages[0]?.boxes.filter(({ kind }) => kind === 'line').length).toBeGreaterThanOrEqual(2);
  });

  test('that it has ended; the pages after it are as they were', () => {
    const pages = laidOut(composeEnded(fixtureBooklet, '2027-02-11'));
    expect(gridFaults(pages)).toEqual([]);
    expect(textOn(pages[0])).toContain('Its last day was 11 February 2027.');
    expect(pages.slice(1).map(textOn)).toEqual(laidOut(fixtureBooklet).slice(1).map(textOn));
  });

  test('that it was withdrawn, in the frame of the stop signs: one folded sheet without a set', () => {
    const pages = laidOut(composeWithdrawn(fixtureBooklet, '2027-01-08'));
    expect(gridFaults(pages)).toEqual([]);
    expect(pages).toHaveLength(4);
    expect(pages[0]?.boxes.some(({ kind }) => kind === 'frame')).toBe(true);
    expect(textOn(pages[0])).toContain('Do not train from it, nor from a copy on paper.');
    expect(pages.map(textOn).join(' ')).not.toMatch(/× ?\d|\d (kg|reps)|Contents/);
  });
});
