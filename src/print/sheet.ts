/**
 * The sheet and its grid: one A5 page of the booklet, in PostScript points from the top left corner.
 * It knows measures alone; what stands on the page is laid out elsewhere.
 */

/** Millimetres to points: 72 points to the inch, 25.4 mm to the inch. */
export const mm = (millimetres: number): number => (millimetres * 72) / 25.4;

/** ISO 216, A5: 148 × 210 mm. */
export const PAGE_WIDTH = mm(148);
export const PAGE_HEIGHT = mm(210);

/** Every baseline stands on a grid of this step. */
export const LINE = 14;
export const LINES_ON_PAGE = 35;
/** From the top of a line to its baseline, whatever the size of the letters. */
export const BASELINE = 10.5;

export const HEAD = 42;
const INNER = mm(16);
export const TEXT_WIDTH = mm(104);
const GAP = mm(4);
export const MARGIN_WIDTH = mm(16);
/** Nothing stands nearer to the trimmed edge: home printers cannot reach it, and a knife may stray. */
export const CLEAR = mm(8);
/** A week table runs into the outer margin. */
export const TABLE_WIDTH = mm(120);
export const WRITING_LINE = mm(8);
/** The unit of the tally: the height of a stroke. */
export const TALLY_UNIT = mm(7);
/** The line of the running foot, counted like the lines of the text. */
export const FOOT_LINE = 36;

/** Even pages are versos and stand left. */
export type PageSide = 'verso' | 'recto';
export const sideOf = (page: number): PageSide => (page % 2 === 0 ? 'verso' : 'recto');

/** `text` is the column of text, `margin` the tally's column beside it, `table` both, without the gap. */
export type Area = 'text' | 'margin' | 'table';

export const widthOf = (area: Area): number =>
  area === 'text' ? TEXT_WIDTH : area === 'margin' ? MARGIN_WIDTH : TABLE_WIDTH;

/** Where an area begins, measured from the left edge. The outer margin is right on a recto, left on a verso. */
export function leftOf(area: Area, side: PageSide): number {
  if (side === 'recto') return area === 'margin' ? INNER + TEXT_WIDTH + GAP : INNER;
  const inner = PAGE_WIDTH - INNER;
  if (area === 'text') return inner - TEXT_WIDTH;
  return area === 'margin' ? inner - TEXT_WIDTH - GAP - MARGIN_WIDTH : inner - TABLE_WIDTH;
}
