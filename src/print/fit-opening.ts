/** Where a session is parted between the left and the right page of its opening. Heights only; it sets nothing. */

export interface RowHeight {
  readonly lines: number;
  /** Done turn about with the row before it, so better not parted from it. */
  readonly joined: boolean;
}

export interface Opening {
  /** The row that begins the right page; absent if all stand on the left. */
  readonly breakAt?: number;
  readonly versoLines: number;
  readonly rectoLines: number;
  /** Lower is better. */
  readonly cost: number;
}

/** Turning between two exercises done turn about is worse than any white space. */
const PARTED = 40;
/** Some white at the foot of the left page is welcome. */
const WELCOME = 4;

const sum = (rows: readonly RowHeight[]): number => rows.reduce((total, row) => total + row.lines, 0);

/**
 * The best break for rows after `before` lines on the left page and `head` lines on the right, `after` lines last.
 * A full left page is best: what is left on the right becomes room for notes. Undefined if no opening holds it all.
 */
export function fitOpening(
  before: number,
  head: number,
  rows: readonly RowHeight[],
  after: number,
  linesOnPage: number,
): Opening | undefined {
  const all = before + sum(rows) + after;
  if (all <= linesOnPage) return { versoLines: all, rectoLines: 0, cost: 0 };
  let best: Opening | undefined;
  for (let breakAt = 1; breakAt < rows.length; breakAt += 1) {
    const versoLines = before + sum(rows.slice(0, breakAt));
    const rectoLines = head + sum(rows.slice(breakAt)) + after;
    if (versoLines > linesOnPage || rectoLines > linesOnPage) continue;
    const white = Math.max(0, linesOnPage - versoLines - WELCOME);
    const cost = white + (rows[breakAt]?.joined ? PARTED : 0);
    if (!best || cost < best.cost) best = { breakAt, versoLines, rectoLines, cost };
  }
  return best;
}
