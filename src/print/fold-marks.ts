/** Where a sheet is folded, stapled or sewn: small marks on the fold itself, which disappear in the spine. */
import type { FoldedSheet, SheetSide } from './impose.js';
import { number } from './operators.js';
import { mm } from './sheet.js';

/** Nearer to the edge than this many printers set nothing. Common practice, no source. */
const EDGE = mm(5);
const FOLD_TICK = mm(4);
const MARK = 0.5;

/** Staples a quarter of the height from head and foot, as long as a staple is wide. Common practice, no source. */
export const STAPLES = [1 / 4, 3 / 4] as const;
export const STAPLE = mm(12);
/** A pamphlet stitch of three holes: the middle, and a sixth of the height from head and foot. Common practice, no source. */
export const HOLES = [1 / 6, 1 / 2, 5 / 6] as const;
const HOLE = 1.2;

export type Marks = 'staples' | 'holes' | 'none';

/** One side of one sheet, and the marks of its fold. */
export interface Side {
  readonly pages: SheetSide;
  readonly marks: Marks;
}

/** A stapler works from the outside, a needle from the inside: each has its marks where they are looked for. */
export const sidesOf = (sheets: readonly FoldedSheet[]): readonly { readonly front: Side; readonly back: Side }[] =>
  sheets.map(({ front, back }, i) => ({
    front: { pages: front, marks: i === 0 ? 'staples' : 'none' },
    back: { pages: back, marks: i === sheets.length - 1 ? 'holes' : 'none' },
  }));

/** In the axes of the file, from the bottom left corner. */
export function foldMarks(marks: Marks, width: number, height: number): string {
  if (marks === 'none') return '';
  const x = number(width / 2);
  const stroke = (from: number, to: number): string => `${x} ${number(from)} m ${x} ${number(to)} l S`;
  const ticks = [stroke(EDGE, EDGE + FOLD_TICK), stroke(height - EDGE - FOLD_TICK, height - EDGE)];
  const along =
    marks === 'staples'
      ? STAPLES.map((part) => stroke(part * height - STAPLE / 2, part * height + STAPLE / 2))
      : HOLES.map(
          (part) => `q 1 J ${number(2 * HOLE)} w ${x} ${number(part * height)} m ${x} ${number(part * height)} l S Q`,
        );
  return ['q', '0 G', `${number(MARK)} w`, ...ticks, ...along, 'Q'].join('\n');
}
