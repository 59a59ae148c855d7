/** A booklet too thick to fold in one is folded in two. Where it is parted is decided here, from its pages alone. */
import { PAGES_ON_A_SHEET, wholeSheets } from './impose.js';
import type { Page } from './page.js';

/** More than eight folded sheets do not close. Common practice, no source. */
export const FOLDING_PAGES = 32;

/** Pages of a part, by their numbers in the whole. */
export interface FoldPart {
  readonly from: number;
  readonly to: number;
}

/**
 * One part, or two of whole sheets. The second begins where something begins, and on no session's right-hand page: as
 * near to the middle as can be.
 */
export function foldParts(pages: readonly Page[]): readonly FoldPart[] {
  const count = pages.length;
  if (count <= FOLDING_PAGES) return [{ from: 1, to: count }];
  const middle = wholeSheets(count / 2);
  const least = Math.max(PAGES_ON_A_SHEET, count - FOLDING_PAGES);
  const breaks = Array.from({ length: FOLDING_PAGES / PAGES_ON_A_SHEET }, (_, i) => (i + 1) * PAGES_ON_A_SHEET);
  const possible = breaks.filter((at) => at >= least && at < count);
  const begins = possible.filter((at) => (pages[at]?.bookmarks.length ?? 0) > 0);
  const nearest = (of: readonly number[]): number | undefined =>
    [...of].sort((a, b) => Math.abs(a - middle) - Math.abs(b - middle) || a - b)[0];
  const at = nearest(begins) ?? nearest(possible) ?? middle;
  return [
    { from: 1, to: at },
    { from: at + 1, to: count },
  ];
}
