/** Orders of folded sheets: against published ones, and by folding them here leaf by leaf. */
import { describe, expect, test } from 'vitest';
import { FOLDING_PAGES, foldParts } from '../../src/print/fold-parts.js';
import { type Binding, type FoldedSheet, imposeFolded } from '../../src/print/impose.js';
import type { Page } from '../../src/print/page.js';
import { A4, A5, HALF_LETTER, LETTER, mm, sideOf } from '../../src/print/sheet.js';
import { readFolded } from './fold-sheets.js';

const orderOf = (pages: number): readonly (readonly number[])[] =>
  imposeFolded(pages, 'left').flatMap(({ front, back }) => [front, back]);

describe('published orders', () => {
  test('4 pages: vesterkopi.dk, “Preparation of book or booklet 2”', () => {
    expect(orderOf(4)).toEqual([
      [4, 1],
      [2, 3],
    ]);
  });

  test('8 pages: printablesworld.com, “Booklet page order calculator”', () => {
    expect(orderOf(8)).toEqual([
      [8, 1],
      [2, 7],
      [6, 3],
      [4, 5],
    ]);
  });

  // johnpaulandbertha.org, page ranges of single-signature booklets two up on both sides (1999): for N pages the fronts are
  // N, 1, N-2, 3 … N/2+2, N/2-1; the pile is turned over, and the backs are N/2, N/2+1, N/2-2, N/2+3 … 2, N-1.
  test.each([
    [12, [12, 1, 10, 3, 8, 5], [6, 7, 4, 9, 2, 11]],
    [16, [16, 1, 14, 3, 12, 5, 10, 7], [8, 9, 6, 11, 4, 13, 2, 15]],
  ])('%i pages: the printed formula, and its worked example of 16', (pages, fronts, backs) => {
    const sheets = imposeFolded(pages, 'left');
    expect(sheets.flatMap(({ front }) => front)).toEqual(fronts);
    expect([...sheets].reverse().flatMap(({ back }) => back)).toEqual(backs);
  });
});

describe.each<Binding>(['left', 'right'])('bound at the %s', (binding) => {
  test('every booklet of up to 64 pages reads in order once it is folded', () => {
    for (let pages = 1; pages <= 64; pages += 1) {
      const whole = Math.ceil(pages / 4) * 4;
      const inOrder = Array.from({ length: whole }, (_, i) => i + 1);
      expect(readFolded(imposeFolded(pages, binding), binding), `${pages} pages`).toEqual(inOrder);
    }
  });

  test('a sheet misplaced, or turned on the other edge, is found', () => {
    const sheets = imposeFolded(16, binding);
    const inOrder = readFolded(sheets, binding);
    expect(readFolded([...sheets].reverse(), binding)).not.toEqual(inOrder);
    const turned = sheets.map(({ front, back }): FoldedSheet => ({ front, back: [back[1], back[0]] }));
    expect(readFolded(turned, binding)).not.toEqual(inOrder);
  });
});

test('lines from right to left: the cover stands left on its sheet', () => {
  expect(imposeFolded(8, 'right')).toEqual([
    { front: [1, 8], back: [7, 2] },
    { front: [3, 6], back: [5, 4] },
  ]);
});

const pagesWith = (count: number, begins: (page: number) => boolean): readonly Page[] =>
  Array.from({ length: count }, (_, i) => ({
    number: i + 1,
    side: sideOf(i + 1),
    boxes: [],
    targets: [],
    bookmarks: begins(i + 1) ? [{ title: 'x', level: 1, y: 0 }] : [],
  }));

describe('parts', () => {
  test('of up to 32 pages there is one', () => {
    expect(foldParts(pagesWith(32, () => true))).toEqual([{ from: 1, to: 32 }]);
  });

  test('of more there are two of whole sheets, none thicker than 32, parted where something begins', () => {
    for (let count = FOLDING_PAGES + 4; count <= 2 * FOLDING_PAGES; count += 4) {
      const [one, two, ...more] = foldParts(pagesWith(count, (page) => page % 3 === 0));
      expect(more).toEqual([]);
      expect([one?.from, two?.to]).toEqual([1, count]);
      expect(two?.from).toBe((one?.to ?? 0) + 1);
      for (const part of [one, two]) {
        const pages = (part?.to ?? 0) - (part?.from ?? 0) + 1;
        expect(pages % 4).toBe(0);
        expect(pages).toBeLessThanOrEqual(FOLDING_PAGES);
      }
      const possible = Array.from({ length: 8 }, (_, i) => (i + 1) * 4).filter((at) => at >= count - FOLDING_PAGES);
      if (possible.some((at) => (at + 1) % 3 === 0)) expect((two?.from ?? 0) % 3).toBe(0);
    }
  });

  test('nearer to the middle rather than further, and the thinner first part of two as near', () => {
    const parted = (count: number, ...begins: readonly number[]) =>
      foldParts(pagesWith(count, (page) => begins.includes(page))).map(({ from }) => from);
    expect(parted(48, 17, 25, 29)).toEqual([1, 25]);
    expect(parted(48, 17, 29)).toEqual([1, 29]);
    expect(parted(48, 21, 29)).toEqual([1, 21]);
    // What begins where no whole sheet ends, or where a part would be too thick, is no place to part at.
    expect(parted(48, 24, 26, 13, 33)).toEqual([1, 33]);
    expect(parted(60, 25, 33)).toEqual([1, 33]);
  });

  test('where nothing begins at any sheet’s end, at the one nearest to the middle', () => {
    for (const [count, second] of [
      [36, 21],
      [40, 21],
      [44, 25],
      [48, 25],
      [52, 29],
      [56, 29],
      [60, 33],
      [64, 33],
    ] as const) {
      for (const begins of [() => false, (page: number) => page % 4 === 2]) {
        expect(foldParts(pagesWith(count, begins))).toEqual([
          { from: 1, to: second - 1 },
          { from: second, to: count },
        ]);
      }
    }
  });
});

describe('paper', () => {
  // ISO 216: A0 is a square metre of sides as 1 to the root of 2; each size is the one before halved, to whole millimetres.
  const isoA = (n: number): readonly [number, number] => {
    let [short, long] = [841, 1189];
    for (let i = 0; i < n; i += 1) [short, long] = [Math.floor(long / 2), short];
    return [short, long];
  };

  test('A4 and A5 are those of ISO 216', () => {
    expect(isoA(4)).toEqual([210, 297]);
    expect(isoA(5)).toEqual([148, 210]);
    for (const [size, n] of [
      [A4, 4],
      [A5, 5],
    ] as const) {
      const [short, long] = isoA(n);
      expect(size.width).toBeCloseTo(mm(short), 9);
      expect(size.height).toBeCloseTo(mm(long), 9);
    }
  });

  test('Letter is 8½ by 11 inches (ANSI/ASME Y14.1, size A), and its half is half of it', () => {
    expect([LETTER.width / 72, LETTER.height / 72]).toEqual([8.5, 11]);
    expect([HALF_LETTER.height, HALF_LETTER.width * 2]).toEqual([LETTER.width, LETTER.height]);
  });

  test('two A5 leave a millimetre of A4', () => {
    expect((A4.height - 2 * A5.width) * (25.4 / 72)).toBeCloseTo(1, 9);
  });
});
