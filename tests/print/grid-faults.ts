/** What is wrong with a page by the rules of its grid; an empty list is a page in order. */
import type { Page, TextBox } from '../../src/print/page.js';
import { A5_SHEET, BASELINE, LINE, type Sheet } from '../../src/print/sheet.js';
import { stylesOf } from '../../src/print/type-styles.js';

const SLACK = 0.6;
/** How far letters reach above and below their baseline, in sizes: capitals, and the tail of a g. */
const ABOVE = 0.66;
const BELOW = 0.22;

const textBoxes = (page: Page): readonly TextBox[] => page.boxes.filter((box) => box.kind === 'text');
const named = (page: Page, box: TextBox): string =>
  `page ${page.number}, "${box.text}" at ${box.x.toFixed(1)}, ${box.y.toFixed(1)}`;

export function offThePage(page: Page, sheet: Sheet = A5_SHEET): readonly string[] {
  const { clear, paper, enlarged } = sheet;
  const styles = stylesOf(sheet);
  return page.boxes.flatMap((box) => {
    if (box.kind === 'empty') return [];
    const [right, top, bottom] =
      box.kind === 'text'
        ? [box.x + box.width, box.y - styles[box.style].size * ABOVE, box.y + styles[box.style].size * BELOW]
        : box.kind === 'frame' || box.kind === 'picture' || box.kind === 'photograph'
          ? [box.x + box.width, box.y, box.y + box.height]
          : [Math.max(box.x, box.toX), Math.min(box.y, box.toY), Math.max(box.y, box.toY)];
    const left = box.kind === 'line' ? Math.min(box.x, box.toX) : box.x;
    const out =
      left < clear - SLACK ||
      right > paper.width / enlarged - clear + SLACK ||
      top < clear - SLACK ||
      bottom > paper.height / enlarged - clear + SLACK;
    return out
      ? [
          `page ${page.number}: ${box.kind} ${box.kind === 'text' ? box.text : ''} at ${left}, ${top}, ${right}, ${bottom}`,
        ]
      : [];
  });
}

/** Words stand between the head and the foot; only the running foot, which nothing tags, stands below. */
export function offTheTextBlock(page: Page, { head, linesOnPage }: Sheet = A5_SHEET): readonly string[] {
  const last = head + linesOnPage * LINE;
  return textBoxes(page)
    .filter((box) => box.tag && (box.y < head || box.y > last))
    .map((box) => named(page, box));
}

/** Titles, framed stop signs, the calendar and the printed key may stand on the half step; the rest on the step. */
export function offTheGrid(page: Page, step: number, { head }: Sheet = A5_SHEET): readonly string[] {
  return textBoxes(page)
    .filter((box) => box.tag && box.tag.role !== 'Figure' && box.style !== 'title')
    .filter((box) => {
      const from = (box.y - head - BASELINE) / step;
      return Math.abs(from - Math.round(from)) > 0.001;
    })
    .map((box) => named(page, box));
}

/** A title, the heading of a frame, the head of a column, the name of a row; headings in the margin stand beside their words. */
const isHead = ({ tag, style }: TextBox): boolean =>
  tag !== undefined &&
  (tag.role === 'H1' ||
    tag.role === 'H2' ||
    (tag.role === 'TH' && tag.scope === 'Column') ||
    (style === 'exercise' && (tag.role === 'H3' || tag.parent?.role === 'TH')));

/** Heads with no words under them on their page. */
export function strandedHeads(page: Page): readonly string[] {
  const said = textBoxes(page).filter(({ tag }) => tag !== undefined);
  const lowest = Math.max(...said.filter((box) => !isHead(box)).map(({ y }) => y));
  return said.filter((box) => isHead(box) && box.y > lowest).map((box) => named(page, box));
}

interface Field {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** What letters take up, whether or not these have tails. */
function fieldOf(box: TextBox, sheet: Sheet): Field {
  const { size } = stylesOf(sheet)[box.style];
  return { left: box.x, top: box.y - size * ABOVE, right: box.x + box.width, bottom: box.y + size * BELOW };
}

const isApart = (one: Field, other: Field): boolean =>
  one.right <= other.left + SLACK ||
  other.right <= one.left + SLACK ||
  one.bottom <= other.top + SLACK ||
  other.bottom <= one.top + SLACK;

const isWithin = (one: Field, other: Field): boolean =>
  one.left >= other.left && one.right <= other.right && one.top >= other.top && one.bottom <= other.bottom;

interface Named {
  readonly name: string;
  readonly field: Field;
}

const boxField = ({ x, y, width, height }: Extract<Page['boxes'][number], { height: number }>): Field => ({
  left: x,
  top: y,
  right: x + width,
  bottom: y + height,
});

/** Drawings and photographs. */
const pictured = (page: Page): readonly Named[] =>
  page.boxes.flatMap((box) =>
    box.kind === 'picture' || box.kind === 'photograph'
      ? [{ name: `page ${page.number}, a ${box.kind}`, field: boxField(box) }]
      : [],
  );

/**
 * Words over words, words over a drawing or a photograph, pictures over each other; a frame or a rule through words or
 * a picture. What is within a frame is in order.
 */
export function overlaps(page: Page, sheet: Sheet = A5_SHEET): readonly string[] {
  const words = textBoxes(page).map((box): Named => ({ name: named(page, box), field: fieldOf(box, sheet) }));
  const filled = [...words, ...pictured(page)];
  const frames = page.boxes.flatMap((box) => (box.kind === 'frame' ? [boxField(box)] : []));
  const over = filled.flatMap((one, i) =>
    filled.slice(i + 1).flatMap((other) => (isApart(one.field, other.field) ? [] : [`${one.name} and ${other.name}`])),
  );
  const through = frames.flatMap((frame) =>
    filled.flatMap(({ name, field }) =>
      isApart(field, frame) || isWithin(field, frame) ? [] : [`a frame through ${name}`],
    ),
  );
  return [...over, ...through, ...struck(page, sheet)];
}

/** Words that a level rule runs through. */
function struck(page: Page, sheet: Sheet): readonly string[] {
  const rules = page.boxes.flatMap((box) => (box.kind === 'line' && box.y === box.toY ? [box] : []));
  return textBoxes(page).flatMap((box) => {
    const { left, top, right, bottom } = fieldOf(box, sheet);
    const through = rules.some(
      ({ x, toX, y, thickness }) =>
        Math.min(x, toX) < right - SLACK &&
        Math.max(x, toX) > left + SLACK &&
        y + thickness / 2 > top + SLACK &&
        y - thickness / 2 < bottom - SLACK,
    );
    return through ? [`a rule through ${named(page, box)}`] : [];
  });
}

/** What is wrong with the pages of a booklet on A5; that no head stands alone is asked apart. */
export const gridFaults = (pages: readonly Page[]): readonly string[] =>
  pages.flatMap((page) => [
    ...offThePage(page),
    ...offTheTextBlock(page),
    ...offTheGrid(page, LINE / 2),
    ...overlaps(page),
  ]);
