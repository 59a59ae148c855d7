/** The building stones of a page: slugs of whole lines, joined to blocks. Where on which page they stand is decided by lay-out-pages. */
import { layOutLines, layOutParagraph, type StyledRun } from './lay-out-lines.js';
import type { Measure } from './measure.js';
import { type Box, type LineBox, moved, type SetLine, type Tag } from './page.js';
import { type Area, LINE, mm, type Sheet, widthOf } from './sheet.js';

/** A slug as in lead type: so many lines high, never split. Its boxes count from its own top left corner. */
export interface Slug {
  readonly lines: number;
  readonly area: Area;
  readonly boxes: readonly Box[];
  /** Boxes in the margin beside it: a heading. */
  readonly beside?: { readonly boxes: readonly Box[] };
  /** Stays on one page with the slug after it. */
  readonly withNext: boolean;
  readonly target?: string;
  readonly bookmark?: { readonly title: string; readonly level: 1 | 2 };
}

export interface Block {
  readonly slugs: readonly Slug[];
  /** Moves to a fresh page rather than being split, if it fits there. */
  readonly whole: boolean;
  /** Empty lines before it, unless it begins a page. */
  readonly before: number;
  /** Begins a page, whatever room is left. */
  readonly breakBefore?: true;
  /** On a fresh page it stands under nothing carried over. */
  readonly apart?: true;
  /** On one page with the blocks before it, from the last that is not joined, or on one opening where no page holds them. */
  readonly joined?: true;
  /** Drawn over its first slug, by how many empty lines stand above it. */
  readonly over?: (white: number) => readonly Box[];
}

export const HAIRLINE = 0.5;

export const rule = (x: number, y: number, width: number, thickness = HAIRLINE): LineBox => ({
  kind: 'line',
  x,
  y,
  toX: x + width,
  toY: y,
  thickness,
});

export const linesOf = (slugs: readonly Slug[]): number => slugs.reduce((sum, slug) => sum + slug.lines, 0);

export const block = (slugs: readonly Slug[], parts: { whole?: boolean; before?: number } = {}): Block => ({
  slugs,
  whole: parts.whole ?? false,
  before: parts.before ?? 0,
});

/** Of blocks that begin a page. */
export const blocksLines = (blocks: readonly Block[]): number =>
  blocks.reduce((sum, one, i) => sum + linesOf(one.slugs) + (i > 0 ? one.before : 0), 0);

export const blankSlug = (lines: number, area: Area = 'text'): Slug => ({ lines, area, boxes: [], withNext: false });

/** Set lines as slugs: a paragraph never leaves one line alone on either page. */
export function slugsOf(lines: readonly SetLine[], area: Area, x = 0): readonly Slug[] {
  return lines.map((line, i) => ({
    lines: line.lines,
    area,
    boxes: line.boxes.map((box) => moved(box, x, 0)),
    withNext: i < lines.length - 1 && (i === 0 || i === lines.length - 2),
  }));
}

export interface Column {
  readonly area: Area;
  readonly x: number;
  readonly width: number;
}
export const columnOf = (area: Area, sheet: Sheet, x = 0): Column => ({ area, x, width: widthOf(area, sheet) - x });

export function paragraph(
  runs: readonly StyledRun[],
  measure: Measure,
  column = columnOf('text', measure.sheet),
): readonly Slug[] {
  return slugsOf(layOutParagraph(runs, column.width, measure), column.area, column.x);
}

/** Half a line down; an empty line has to follow, and half of it is then left. */
export const lowered = (slug: Slug): Slug => ({ ...slug, boxes: slug.boxes.map((box) => moved(box, 0, LINE / 2)) });

/** All of it stays with what follows. */
export const withNext = (slugs: readonly Slug[]): readonly Slug[] => slugs.map((slug) => ({ ...slug, withNext: true }));

/** Nothing of it is parted. */
export const together = (slugs: readonly Slug[]): readonly Slug[] =>
  slugs.map((slug, i) => ({ ...slug, withNext: i < slugs.length - 1 }));

export interface HeadingParts {
  readonly tag: Tag;
  readonly area?: Area;
  readonly target?: string;
  readonly level?: 1 | 2;
}

/** A title of two steps a line, kept with what follows; a place to link to, and a bookmark. */
export function title(text: string, measure: Measure, parts: HeadingParts): readonly Slug[] {
  const slugs = withNext(
    paragraph([{ style: 'title', text, tag: parts.tag }], measure, columnOf(parts.area ?? 'text', measure.sheet)),
  );
  return slugs.map((slug, i) =>
    i === 0
      ? {
          ...slug,
          ...(parts.target ? { target: parts.target } : {}),
          ...(parts.level ? { bookmark: { title: text, level: parts.level } } : {}),
        }
      : slug,
  );
}

/** The indent of an item's text behind its dash. */
export const HANG = mm(3.5);

/** An item with what leads it (a dash, a word, a drawing) hanging in a column of its own. */
export function hangingItem(
  lead: readonly StyledRun[],
  body: readonly StyledRun[],
  hang: number,
  measure: Measure,
  column = columnOf('text', measure.sheet),
): readonly Slug[] {
  const left = layOutLines(lead, hang - 4, measure);
  const right = layOutLines(body, column.width - hang, measure);
  const rows = Array.from({ length: Math.max(left.length, right.length) }, (_, i): Slug => {
    const boxes = [
      ...(left[i]?.boxes.map((box) => moved(box, column.x, 0)) ?? []),
      ...(right[i]?.boxes.map((box) => moved(box, column.x + hang, 0)) ?? []),
    ];
    return { lines: 1, area: column.area, boxes, withNext: false };
  });
  return together(rows);
}

/** Ruled lines to write on, 8 mm apart, in large print 11; the only slugs that are no whole number of grid lines high. */
export const writingLines = (count: number, area: Area, sheet: Sheet): readonly Slug[] =>
  Array.from({ length: count }, () => ({
    lines: sheet.writingLine / LINE,
    area,
    boxes: [rule(0, sheet.writingLine, widthOf(area, sheet))],
    withNext: false,
  }));

/** A field of writing lines that fills so many steps of the grid, evenly from its top. */
export function writingField(lines: number, area: Area, sheet: Sheet): Slug {
  const count = Math.floor((lines * LINE) / sheet.writingLine);
  return {
    lines,
    area,
    boxes: Array.from({ length: count }, (_, i) => rule(0, (i + 1) * sheet.writingLine, widthOf(area, sheet))),
    withNext: false,
  };
}
