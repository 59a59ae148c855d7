/**
 * Imposition: which page stands where on a sheet that is printed on both sides, folded once and put inside the sheets
 * before it. Page numbers alone; nothing is placed or drawn.
 */

/** The edge a booklet is bound at: left where lines run from left to right, right where they run from right to left. */
export type Binding = 'left' | 'right';

/** What stands on one side of an open sheet, from the left; a page beyond the last is empty. */
export type SheetSide = readonly [left: number, right: number];

/** `back` is read by turning the sheet over like the leaf of a book: printers call it *flipped on the short edge*. */
export interface FoldedSheet {
  readonly front: SheetSide;
  readonly back: SheetSide;
}

export const PAGES_ON_A_SHEET = 4;

/** How many pages the sheets hold that `pages` need. */
export const wholeSheets = (pages: number): number => Math.ceil(pages / PAGES_ON_A_SHEET) * PAGES_ON_A_SHEET;

/** Sheets from the outermost to the innermost; pages count from 1. */
export function imposeFolded(pages: number, binding: Binding): readonly FoldedSheet[] {
  const all = wholeSheets(pages);
  const side = (left: number, right: number): SheetSide => (binding === 'left' ? [left, right] : [right, left]);
  return Array.from({ length: all / PAGES_ON_A_SHEET }, (_, sheet) => {
    const first = 2 * sheet + 1;
    const last = all - 2 * sheet;
    return { front: side(last, first), back: side(first + 1, last - 1) };
  });
}
