/**
 * What a laid-out page is drawn as: how large the paper is, and how much larger than laid out everything on it. The
 * same pages can so be had on another paper, every line of them where it was.
 */
import { type Box, moved, type Page } from './page.js';
import type { PaperSize, Sheet } from './sheet.js';
import { type StyleName, stylesOf } from './type-styles.js';

export interface Format {
  readonly paper: PaperSize;
  readonly sheet: Sheet;
  /** How much larger than laid out. */
  readonly times: number;
}

/** As the sheet itself says. */
export const formatOf = (sheet: Sheet): Format => ({ paper: sheet.paper, sheet, times: sheet.enlarged });

/** As large as the paper allows, in its middle. */
export function onPaper(sheet: Sheet, paper: PaperSize): Format {
  const { width, height } = sheet.paper;
  return { paper, sheet, times: sheet.enlarged * Math.min(paper.width / width, paper.height / height) };
}

/** In points, as drawn. */
export const sizeOf = ({ sheet, times }: Format, style: StyleName): number => stylesOf(sheet)[style].size * times;

function largerBox(box: Box, times: number): Box {
  const at = { x: box.x * times, y: box.y * times };
  switch (box.kind) {
    case 'text':
      return { ...box, ...at, width: box.width * times };
    case 'line':
      return { ...box, ...at, toX: box.toX * times, toY: box.toY * times, thickness: box.thickness * times };
    case 'frame':
    case 'picture':
    case 'photograph':
      return {
        ...box,
        ...at,
        width: box.width * times,
        height: box.height * times,
        ...(box.kind === 'frame' ? { thickness: box.thickness * times } : {}),
      };
    case 'empty':
      return { ...box, ...at };
  }
}

/** The page in points of its paper. */
export function drawnAs(page: Page, { paper, sheet, times }: Format): Page {
  const right = (paper.width - (sheet.paper.width * times) / sheet.enlarged) / 2;
  const down = (paper.height - (sheet.paper.height * times) / sheet.enlarged) / 2;
  if (times === 1 && right === 0 && down === 0) return page;
  const lower = <Place extends { readonly y: number }>(place: Place): Place => ({
    ...place,
    y: place.y * times + down,
  });
  return {
    ...page,
    boxes: page.boxes.map((box) => moved(largerBox(box, times), right, down)),
    targets: page.targets.map(lower),
    bookmarks: page.bookmarks.map(lower),
  };
}
