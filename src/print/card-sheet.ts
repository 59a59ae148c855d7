/** Sheets that are no book: a page of two columns, to hang up or to hand over. Slugs are laid out as wide as a column. */
import { type Block, blankSlug, linesOf, paragraph, type Slug, writingField } from './lay-out-blocks.js';
import { fillPages } from './lay-out-pages.js';
import type { Measure } from './measure.js';
import { type Bookmark, type Box, moved, type Page, tag } from './page.js';
import { A4_LARGE_SHEET, A5_SHEET, LINE, mm, type PaperSize, type Sheet, sideOf } from './sheet.js';

const EDGE = mm(12);
const HEAD = mm(12);
const FOOT = mm(10);
const BETWEEN = mm(8);

/** `columns` of text on the whole paper. A sheet for large print has the same edges, in paper's own millimetres. */
export function cardSheet(paper: PaperSize, type: Sheet['type'], columns: number): Sheet {
  const base = type === 'large' ? A4_LARGE_SHEET : A5_SHEET;
  const scaled = (points: number): number => points / base.enlarged;
  const width = (scaled(paper.width - 2 * EDGE) - (columns - 1) * scaled(BETWEEN)) / columns;
  return {
    ...base,
    paper,
    head: scaled(HEAD),
    linesOnPage: Math.floor(scaled(paper.height - HEAD - FOOT) / LINE),
    inner: scaled(EDGE),
    textWidth: width,
    tableWidth: width,
    gap: scaled(BETWEEN),
  };
}

/** From edge to edge of the text, over all columns. */
export const acrossColumns = (sheet: Sheet): number => sheet.paper.width / sheet.enlarged - 2 * sheet.inner;

/** What is to stand on a card: over the columns, in them, and under them, from edge to edge. */
export interface Card {
  readonly above: readonly Slug[];
  readonly blocks: readonly Block[];
  readonly below: readonly Slug[];
  /** Over lines to write on, where a column has room left for them; absent where nobody is to write. */
  readonly notes?: string;
}

/** Pages of columns filled one after the other; what stands above stands on each of them, what stands below on the last. */
export function layOutCard({ above, blocks, below, notes }: Card, columns: number, measure: Measure): readonly Page[] {
  const { sheet } = measure;
  const top = linesOf(above);
  const bottom = linesOf(below);
  const fill = (lines: number) =>
    fillPages([{ start: 'page', running: '', blocks }], { start: 'page', running: '', blocks: [] }, lines);
  const most = sheet.linesOnPage - top;
  // Room for what stands below is kept on the last page alone, if that is enough.
  const whole = fill(most);
  const last = whole.slice(Math.floor((whole.length - 1) / columns) * columns);
  const fits = whole.length > columns && last.every(({ used }) => used <= most - bottom);
  const filled = fits ? whole : fill(most - bottom);
  const pages = Math.max(1, Math.ceil(filled.length / columns));
  return Array.from({ length: pages }, (_, index): Page => {
    const boxes: Box[] = [];
    const bookmarks: Bookmark[] = [];
    const put = (slug: Slug, x: number, line: number): void => {
      const y = sheet.head + line * LINE;
      if (slug.bookmark) bookmarks.push({ ...slug.bookmark, y });
      boxes.push(...slug.boxes.map((box) => moved(box, x, y)));
    };
    putAll(index === 0 ? above : above.map(unread), 0, (slug, line) => put(slug, sheet.inner, line));
    for (let column = 0; column < columns; column += 1) {
      const filledColumn = filled[index * columns + column];
      const x = sheet.inner + column * (sheet.textWidth + sheet.gap);
      for (const { slug, line } of filledColumn?.slugs ?? []) put(slug, x, top + line);
      if (notes === undefined) continue;
      const lines = fits && index < pages - 1 ? most : most - bottom;
      const used = Math.ceil(filledColumn?.used ?? 0);
      const field = notesSlugs(notes, lines - used, measure);
      putAll(field, top + used, (slug, line) => put(slug, x, line));
    }
    if (index === pages - 1) putAll(below, sheet.linesOnPage - bottom, (slug, line) => put(slug, sheet.inner, line));
    return { number: index + 1, side: sideOf(index + 1), boxes, targets: [], bookmarks };
  });
}

/** Set again, and not read again. */
const unread = ({ bookmark: _, ...slug }: Slug): Slug => ({
  ...slug,
  boxes: slug.boxes.flatMap((box): readonly Box[] => {
    if (box.kind === 'empty') return [];
    if (box.kind === 'frame') return [box];
    const { tag: __, ...untagged } = box;
    return [untagged];
  }),
});

/** A shorter field is not worth ruling. */
const LEAST_NOTES = 6;

function notesSlugs(heading: string, lines: number, measure: Measure): readonly Slug[] {
  if (lines < LEAST_NOTES) return [];
  const head = paragraph([{ style: 'label-strong', text: heading, tag: tag('P') }], measure);
  const used = 1 + linesOf(head);
  return [blankSlug(1), ...head, writingField(lines - used, 'text', measure.sheet)];
}

function putAll(slugs: readonly Slug[], from: number, put: (slug: Slug, line: number) => void): void {
  let line = from;
  for (const slug of slugs) {
    put(slug, line);
    line += slug.lines;
  }
}
