/** Weeks said once, the break of an opening, strokes of the tally, where slugs are kept together. */
import { describe, expect, test } from 'vitest';
import { fitOpening } from '../../src/print/fit-opening.js';
import { type Block, block, type Slug, slugsOf } from '../../src/print/lay-out-blocks.js';
import { type Chapter, fillPages } from '../../src/print/lay-out-pages.js';
import { layOutFeet, tallyWidth } from '../../src/print/lay-out-tally.js';
import { A5, A5_SHEET, leftOf, mm, TALLY_UNIT, widthOf } from '../../src/print/sheet.js';
import { sayWeeks, weekNotes } from '../../src/print/week-notes.js';

describe('weeks', () => {
  test('that are neighbours are said as a range', () => {
    expect(sayWeeks([1, 2, 3, 5]).replaceAll('\u00a0', '_')).toBe('1–3,_5');
    expect(sayWeeks([1, 2]).replaceAll('\u00a0', '_')).toBe('1,_2');
    expect(sayWeeks([4])).toBe('4');
  });
  test('with one sentence share it; all of them need no number', () => {
    const said = [3, 2, 2, 3].map((left, i) => ({ week: i + 1, text: `Leave ${left}.` }));
    expect(weekNotes(said)).toEqual([
      { text: 'Leave 3.', weeks: [1, 4], always: false },
      { text: 'Leave 2.', weeks: [2, 3], always: false },
    ]);
    expect(weekNotes(said.map(({ week }) => ({ week, text: 'Leave 3.' })))[0]?.always).toBe(true);
    expect(weekNotes([{ week: 1, text: '' }])).toEqual([]);
  });
});

const LINES = 35;
const rows = (...lines: readonly number[]) => lines.map((one) => ({ lines: one, joined: false }));

describe('an opening', () => {
  test('holds seven one-sided exercises of eight lines each, or of seven with words after them', () => {
    expect(fitOpening(9, 3, rows(8, 8, 8, 8, 8, 8, 8), 0, LINES)).toMatchObject({
      breakAt: 3,
      versoLines: 33,
      rectoLines: 35,
    });
    expect(fitOpening(9, 3, rows(7, 7, 7, 7, 7, 7, 7), 2, LINES)).toMatchObject({ breakAt: 3 });
  });
  test('fills the left page, so that the right one has room for notes', () => {
    expect(fitOpening(8, 3, rows(8, 8, 8, 8), 0, LINES)).toMatchObject({ breakAt: 3, versoLines: 32, rectoLines: 11 });
  });
  test('does not part what is done turn about, if it need not', () => {
    const circuit = [8, 8, 8, 8].map((lines, i) => ({ lines, joined: i === 3 }));
    expect(fitOpening(8, 3, circuit, 0, LINES)?.breakAt).toBe(2);
  });
  test('is one page where one page is enough', () => {
    expect(fitOpening(8, 3, rows(8, 8), 2, LINES)).toMatchObject({ versoLines: 26, rectoLines: 0 });
    expect(fitOpening(8, 3, rows(8, 8), 2, LINES)?.breakAt).toBeUndefined();
  });
  test('does not exist where no break fits both pages', () => {
    expect(fitOpening(8, 3, rows(30, 30), 0, LINES)).toBeUndefined();
  });
});

describe('the tally', () => {
  test('has a foot for each set, the fifth a dotted slant across the four', () => {
    const feet = layOutFeet(6, 10, 100);
    expect(feet.map((foot) => foot.dotted ?? false)).toEqual([false, false, false, false, true, false]);
    // A foot is 0.15 of the unit high and 0.12 wide; feet stand 0.32 apart.
    expect(feet[0]?.y).toBe(100);
    expect((feet[0]?.y ?? 0) - (feet[0]?.toY ?? 0)).toBeCloseTo(0.15 * TALLY_UNIT);
    expect(feet[0]?.thickness).toBeCloseTo(0.12 * TALLY_UNIT);
    expect((feet[1]?.x ?? 0) - (feet[0]?.x ?? 0)).toBeCloseTo(0.32 * TALLY_UNIT);
    expect(feet[4]?.x).toBeLessThan(feet[0]?.x ?? 0);
    expect(feet[4]?.toX).toBeGreaterThan(feet[3]?.x ?? 0);
    expect(TALLY_UNIT).toBeCloseTo(mm(7));
  });
  test('is as wide as it is said to be', () => {
    for (const strokes of [1, 2, 4, 6, 9]) {
      const feet = layOutFeet(strokes, 0, 0);
      const right = Math.max(...feet.filter((foot) => !foot.dotted).map((foot) => foot.x + foot.thickness / 2));
      expect(tallyWidth(strokes)).toBeCloseTo(right, 6);
    }
    expect(tallyWidth(0)).toBe(0);
  });
});

describe('the sheet', () => {
  test('is mirrored: what is outer right on a recto is outer left on a verso', () => {
    for (const area of ['text', 'margin', 'table'] as const) {
      const recto = leftOf(area, 'recto', A5_SHEET);
      expect(leftOf(area, 'verso', A5_SHEET)).toBeCloseTo(A5.width - recto - widthOf(area, A5_SHEET), 6);
    }
  });
  test('has the measures it was designed with', () => {
    expect(leftOf('text', 'recto', A5_SHEET)).toBeCloseTo(mm(16));
    expect(widthOf('text', A5_SHEET)).toBeCloseTo(mm(104));
    expect(leftOf('margin', 'verso', A5_SHEET)).toBeCloseTo(mm(8));
    expect(widthOf('table', A5_SHEET) / 6).toBeCloseTo(mm(20));
  });
});

const slug = (lines: number, withNext = false): Slug => ({ lines, area: 'text', boxes: [], withNext });
const pageLengths = (blocks: readonly Block[]): readonly number[] =>
  fillPages([{ start: 'page', running: '', blocks }], { start: 'page', running: '', blocks: [] }, LINES).map(
    ({ used }) => used,
  );

describe('a paragraph', () => {
  const set = (lines: number): readonly Slug[] =>
    slugsOf(
      Array.from({ length: lines }, () => ({ boxes: [], width: 10, lines: 1 })),
      'text',
    );
  test.each([2, 3, 4, 5, 8])('of %i lines never leaves one of them alone on either page', (lines) => {
    for (let above = LINES - lines; above < LINES; above += 1) {
      const lengths = pageLengths([block([...Array.from({ length: above }, () => slug(1)), ...set(lines)])]);
      const over = lengths.slice(1).reduce((sum, used) => sum + used, 0);
      const left = lines - over;
      expect(left, `${left} of ${lines} under ${above}`).not.toBe(1);
      expect(over, `${over} of ${lines} over, under ${above}`).not.toBe(1);
    }
  });
  test('of one line is kept with nothing', () => {
    expect(set(1).map(({ withNext }) => withNext)).toEqual([false]);
    expect(set(6).map(({ withNext }) => withNext)).toEqual([true, false, false, false, true, false]);
  });
});

describe('pages', () => {
  test('a heading goes with what follows it', () => {
    const blocks = [
      { slugs: [...Array.from({ length: 34 }, () => slug(1)), slug(1, true), slug(1)], whole: false, before: 0 },
    ];
    expect(pageLengths(blocks)).toEqual([34, 2]);
  });
  test('a whole block moves to a fresh page rather than part', () => {
    const blocks = [
      { slugs: [slug(30)], whole: false, before: 0 },
      { slugs: [slug(3), slug(3)], whole: true, before: 1 },
    ];
    expect(pageLengths(blocks)).toEqual([30, 6]);
  });
  test('a block taller than a page is parted', () => {
    const blocks = [{ slugs: Array.from({ length: 40 }, () => slug(1)), whole: true, before: 0 }];
    expect(pageLengths(blocks)).toEqual([35, 5]);
  });
  test('what is carried over to a page of its own leaves room to write on, unless another chapter takes it', () => {
    const rest = (lines: number): readonly Slug[] => [slug(lines)];
    const carried = { start: 'page', running: '', blocks: [block([slug(30), slug(8)])], rest } as const;
    const short = { start: 'flow', running: '', blocks: [block([slug(5)])] } as const;
    const lengths = (chapters: readonly Chapter[]): readonly number[] =>
      fillPages(chapters, { start: 'page', running: '', blocks: [] }, LINES).map(({ used }) => used);
    expect(lengths([carried])).toEqual([30, 35]);
    expect(lengths([carried, { ...short, start: 'page' }])).toEqual([30, 35, 5]);
    expect(lengths([carried, short])).toEqual([30, 15]);
    expect(lengths([{ ...carried, blocks: [block([slug(30), slug(17)])] }])).toEqual([30, 35]);
    // Nothing was carried over; and what was fills much of its page.
    expect(lengths([{ ...carried, blocks: [block([slug(8)])] }])).toEqual([8]);
    expect(lengths([{ ...carried, blocks: [block([slug(30), slug(20)])] }])).toEqual([30, 20]);
  });
  test('blocks that are joined begin a page together rather than part', () => {
    const joined = (lines: number): Block => ({ ...block([slug(lines)], { whole: true, before: 1 }), joined: true });
    const opened = (lines: number): Block => block([slug(lines)], { whole: true, before: 1 });
    expect(pageLengths([opened(20), opened(8), joined(8)])).toEqual([20, 17]);
    expect(pageLengths([opened(17), opened(8), joined(8)])).toEqual([35]);
    // Too long for any page: from the left page to the right one, where it would else go over a leaf.
    expect(pageLengths([opened(20), opened(8), joined(30)])).toEqual([20, 8, 30]);
    expect(pageLengths([opened(30), opened(30), opened(3), joined(33)])).toEqual([30, 34, 33]);
  });
  test('what is drawn over a block knows the white it stands in', () => {
    const given: number[] = [];
    const over = (white: number): readonly [] => {
      given.push(white);
      return [];
    };
    const ruled = (lines: number, whole = true): Block => ({ ...block([slug(lines)], { whole, before: 1 }), over });
    const carried = [slug(3)];
    const fill = (blocks: readonly Block[]): readonly number[] =>
      fillPages(
        [{ start: 'page', running: '', carried, blocks }],
        { start: 'page', running: '', blocks: [] },
        LINES,
      ).map(({ used }) => used);
    // On a page of its own, with room for the white; with none, where it fills the page; after others; parted from them.
    expect(fill([block([slug(20)]), ruled(20), ruled(32), ruled(5), ruled(30, false)])).toEqual([20, 24, 35, 10, 33]);
    expect(given).toEqual([1, 0, 1, 0]);
  });
  test('text goes back to the grid after lines to write on', () => {
    const blocks = [
      { slugs: [slug(1.62), slug(1.62)], whole: false, before: 0 },
      { slugs: [slug(1)], whole: false, before: 0 },
    ];
    expect(pageLengths(blocks)).toEqual([5]);
  });
});
