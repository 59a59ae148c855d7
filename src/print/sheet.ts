/**
 * The sheets a booklet is laid out on, each with its grid and its scale of type. Layout reckons every length in points
 * of the A5 page, where a line of the grid is 14 high; a sheet for larger print is laid out in the same lengths and
 * enlarged when it is done (`format.ts`). It knows measures alone; what stands on a page is laid out elsewhere.
 */

/** Millimetres to points: 72 points to the inch, 25.4 mm to the inch. */
export const mm = (millimetres: number): number => (millimetres * 72) / 25.4;
const inch = (inches: number): number => inches * 72;

export interface PaperSize {
  /** In points, upright. */
  readonly width: number;
  readonly height: number;
}

/** ISO 216. */
export const A4: PaperSize = { width: mm(210), height: mm(297) };
export const A5: PaperSize = { width: mm(148), height: mm(210) };
/** ANSI/ASME Y14.1 size A, 8½ × 11 inches; and half of it. */
export const LETTER: PaperSize = { width: inch(8.5), height: inch(11) };
export const HALF_LETTER: PaperSize = { width: inch(5.5), height: inch(8.5) };

/** Every baseline stands on a grid of this step. */
export const LINE = 14;
/** From the top of a line to its baseline, whatever the size of the letters. */
export const BASELINE = 10.5;
/** The unit of the tally: the height of a stroke. */
export const TALLY_UNIT = mm(7);

/** Lengths in layout points; nothing of it is ever changed to make a text fit. */
export interface Sheet {
  readonly name: 'a5' | 'half-letter' | 'a4-large' | 'letter-large';
  readonly paper: PaperSize;
  /** How much larger it is drawn than laid out. */
  readonly enlarged: number;
  /** Which scale of type is set on it. */
  readonly type: 'book' | 'large';
  /** Above the first line. */
  readonly head: number;
  readonly linesOnPage: number;
  /** The line of the running foot, counted like the lines of the text. */
  readonly footLine: number;
  readonly inner: number;
  readonly textWidth: number;
  /** Between the text and the tally's column. */
  readonly gap: number;
  readonly marginWidth: number;
  /** A week table runs into the outer margin. */
  readonly tableWidth: number;
  /** Nothing stands nearer to the trimmed edge: home printers cannot reach it, and a knife may stray. */
  readonly clear: number;
  /** From one ruled line to write on to the next. */
  readonly writingLine: number;
}

const CLEAR = mm(8);

export const A5_SHEET: Sheet = {
  name: 'a5',
  paper: A5,
  enlarged: 1,
  type: 'book',
  head: 42,
  linesOnPage: 35,
  footLine: 36,
  inner: mm(16),
  textWidth: mm(104),
  gap: mm(4),
  marginWidth: mm(16),
  tableWidth: mm(120),
  clear: CLEAR,
  writingLine: mm(8),
};

/** Narrower by 8 mm, which the inner margin and the text give; a week keeps its 20 mm. One line taller. */
export const HALF_LETTER_SHEET: Sheet = {
  ...A5_SHEET,
  name: 'half-letter',
  paper: HALF_LETTER,
  linesOnPage: 36,
  footLine: 37,
  inner: mm(11.7),
  textWidth: mm(100.5),
  gap: mm(3.5),
  // Room in the outer margin for the bar of a circuit, clear of the trim.
  tableWidth: mm(117.9),
};

/** 26 points from line to line, as against 14. */
const LARGE = 26 / LINE;
const large = (points: number): number => points / LARGE;

/** Text of 18 points and more, for weak eyes: on the whole sheet, to be bound at the side or kept in a clip. */
export const A4_LARGE_SHEET: Sheet = {
  name: 'a4-large',
  paper: A4,
  enlarged: LARGE,
  type: 'large',
  head: large(mm(14.5)),
  linesOnPage: 28,
  footLine: 29,
  inner: large(mm(18)),
  textWidth: large(mm(148)),
  gap: large(mm(6)),
  marginWidth: large(mm(28)),
  tableWidth: large(mm(180)),
  clear: large(CLEAR),
  writingLine: large(mm(11)),
};

export const LETTER_LARGE_SHEET: Sheet = {
  ...A4_LARGE_SHEET,
  name: 'letter-large',
  paper: LETTER,
  linesOnPage: 26,
  footLine: 27,
  textWidth: large(mm(153)),
  tableWidth: large(mm(185)),
};

/** Even pages are versos and stand left. */
export type PageSide = 'verso' | 'recto';
export const sideOf = (page: number): PageSide => (page % 2 === 0 ? 'verso' : 'recto');

/** `text` is the column of text, `margin` the tally's column beside it, `table` both, without the gap. */
export type Area = 'text' | 'margin' | 'table';

export const widthOf = (area: Area, sheet: Sheet): number =>
  area === 'text' ? sheet.textWidth : area === 'margin' ? sheet.marginWidth : sheet.tableWidth;

/** Where an area begins, measured from the left edge. The outer margin is right on a recto, left on a verso. */
export function leftOf(area: Area, side: PageSide, sheet: Sheet): number {
  const { textWidth, gap, marginWidth } = sheet;
  if (side === 'recto') return area === 'margin' ? sheet.inner + textWidth + gap : sheet.inner;
  const inner = sheet.paper.width / sheet.enlarged - sheet.inner;
  if (area === 'text') return inner - textWidth;
  return area === 'margin' ? inner - textWidth - gap - marginWidth : inner - sheet.tableWidth;
}
