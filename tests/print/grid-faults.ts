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

export function overlaps(page: Page, sheet: Sheet = A5_SHEET): readonly string[] {
  const styles = stylesOf(sheet);
  const boxes = textBoxes(page);
  return boxes.flatMap((one, i) =>
    boxes.slice(i + 1).flatMap((other) => {
      const apart =
        one.x + one.width <= other.x + SLACK ||
        other.x + other.width <= one.x + SLACK ||
        one.y + styles[one.style].size * BELOW <= other.y - styles[other.style].size * ABOVE + SLACK ||
        other.y + styles[other.style].size * BELOW <= one.y - styles[one.style].size * ABOVE + SLACK;
      return apart ? [] : [`${named(page, one)} and ${named(page, other)}`];
    }),
  );
}
