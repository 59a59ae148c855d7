/** Blocks into pages: what stays together, what begins a page, and the running foot. The words are laid out already. */
import type { Block, Slug } from './lay-out-blocks.js';
import { blocksLines, linesOf } from './lay-out-blocks.js';
import { type Bookmark, type Box, moved, type Page, type Target, type TextBox } from './page.js';
import { BASELINE, FOOT_LINE, HEAD, LINE, LINES_ON_PAGE, leftOf, type PageSide, sideOf, widthOf } from './sheet.js';
import type { Measure } from './type-styles.js';

/** Blocks that share a running foot and a rule for where they begin. */
export interface Chapter {
  /** `flow`: on the same page as the chapter before it, if all of it fits there. */
  readonly start: 'page' | 'even' | 'flow';
  readonly running: string;
  readonly blocks: readonly Block[];
  /** Set again at the head of every further page of the chapter. */
  readonly carried?: readonly Slug[];
  /** A page without a number, like a cover. */
  readonly bare?: true;
}

interface Sheet {
  used: number;
  readonly slugs: { readonly slug: Slug; readonly line: number }[];
  running: string;
  bare: boolean;
}

const emptySheet = (running: string, bare = false): Sheet => ({ used: 0, slugs: [], running, bare });

/** Text goes back to the grid after lines to write on, which stand 8 mm apart. */
const onGrid = (used: number, next: Slug | undefined): number =>
  next && Number.isInteger(next.lines) ? Math.ceil(used - ROUNDING) : used;
const ROUNDING = 1e-6;

const fits = (sheet: Sheet, slugs: readonly Slug[], gap = 0): boolean =>
  onGrid(sheet.used, slugs[0]) + gap + linesOf(slugs) <= LINES_ON_PAGE + ROUNDING;

function put(sheet: Sheet, slugs: readonly Slug[]): void {
  for (const slug of slugs) {
    sheet.used = onGrid(sheet.used, slug);
    sheet.slugs.push({ slug, line: sheet.used });
    sheet.used += slug.lines;
  }
}

/** Slugs that may not be parted, in order. */
function unitsOf(slugs: readonly Slug[]): readonly (readonly Slug[])[] {
  const units: Slug[][] = [];
  let open = false;
  for (const slug of slugs) {
    const last = units.at(-1);
    if (open && last) last.push(slug);
    else units.push([slug]);
    open = slug.withNext;
  }
  return units;
}

function fillChapter(chapter: Chapter, sheets: Sheet[]): void {
  const fresh = (apart = false): Sheet => {
    const sheet = emptySheet(chapter.running, chapter.bare === true);
    if (!apart) put(sheet, chapter.carried ?? []);
    sheets.push(sheet);
    return sheet;
  };
  let sheet = sheets.at(-1) ?? fresh();
  for (const block of chapter.blocks) {
    const head = linesOf(chapter.carried ?? []);
    const gap = sheet.used === 0 ? 0 : block.before;
    const total = linesOf(block.slugs);
    if (block.breakBefore && sheet.used > 0) {
      sheet = fresh();
      sheet.used += head > 0 ? block.before : 0;
      put(sheet, block.slugs);
      continue;
    }
    if (fits(sheet, block.slugs, gap)) {
      sheet.used += gap;
      put(sheet, block.slugs);
      continue;
    }
    if (block.whole && total <= LINES_ON_PAGE - head) {
      sheet = fresh(block.apart);
      sheet.used += sheet.used > 0 && total + head + block.before <= LINES_ON_PAGE ? block.before : 0;
      put(sheet, block.slugs);
      continue;
    }
    if (sheet.used > 0) sheet.used = Math.min(sheet.used + gap, LINES_ON_PAGE);
    for (const unit of unitsOf(block.slugs)) sheet = putUnit(unit, sheet, fresh, head);
  }
}

function putUnit(unit: readonly Slug[], sheet: Sheet, fresh: () => Sheet, head: number): Sheet {
  if (fits(sheet, unit)) {
    put(sheet, unit);
    return sheet;
  }
  let on = fresh();
  if (linesOf(unit) <= LINES_ON_PAGE - head) {
    put(on, unit);
    return on;
  }
  // Taller than a page: there is no better place to part it than where the page ends.
  for (const slug of unit) {
    if (!fits(on, [slug])) on = fresh();
    put(on, [slug]);
  }
  return on;
}

/** Two empty lines part chapters that share a page. */
const BETWEEN_CHAPTERS = 2;

/** `filler` is a page of its own, put where a chapter has to wait for a left-hand page. */
export function fillPages(chapters: readonly Chapter[], filler: Chapter): readonly Sheet[] {
  const sheets: Sheet[] = [];
  for (const chapter of chapters) {
    const last = sheets.at(-1);
    const shares =
      chapter.start === 'flow' &&
      last !== undefined &&
      !last.bare &&
      last.used > 0 &&
      last.used + BETWEEN_CHAPTERS + blocksLines(chapter.blocks) <= LINES_ON_PAGE;
    if (shares && last) last.used += BETWEEN_CHAPTERS;
    else {
      if (chapter.start === 'even' && sheets.length % 2 === 0) {
        sheets.push(emptySheet(filler.running));
        fillChapter(filler, sheets);
      }
      sheets.push(emptySheet(chapter.running, chapter.bare === true));
    }
    fillChapter(chapter, sheets);
  }
  return sheets;
}

const FOLIO_GAP = 14;

/** Page number at the outer edge, what the page belongs to beside it. */
function runningFoot(sheet: Sheet, number: number, side: PageSide, measure: Measure): readonly TextBox[] {
  if (sheet.bare) return [];
  const y = HEAD + FOOT_LINE * LINE + BASELINE;
  const folio = String(number);
  const folioWidth = measure.width('label-strong', folio);
  const titleWidth = measure.width('label', sheet.running);
  const left = leftOf('table', side);
  const right = left + widthOf('table');
  const at = (style: 'label' | 'label-strong', text: string, x: number, width: number): TextBox => ({
    kind: 'text',
    style,
    x,
    y,
    width,
    text,
    endsAtSpace: false,
  });
  const folioBox = at('label-strong', folio, side === 'verso' ? left : right - folioWidth, folioWidth);
  const room = widthOf('table') - FOLIO_GAP - measure.width('label-strong', '000');
  if (sheet.running === '' || titleWidth > room) return [folioBox];
  const x = side === 'verso' ? left + folioWidth + FOLIO_GAP : right - folioWidth - FOLIO_GAP - titleWidth;
  return [folioBox, at('label', sheet.running, x, titleWidth)];
}

/** In the margin words stand towards the text: flush left on a recto, flush right on a verso. */
function besideText(box: Box, side: PageSide, top: number): Box {
  const width = box.kind === 'text' ? box.width : 0;
  const x = leftOf('margin', side) + (side === 'verso' ? widthOf('margin') - width - 2 * box.x : 0);
  return moved(box, x, top);
}

function placeSheet(sheet: Sheet, number: number, measure: Measure): Page {
  const side = sideOf(number);
  const boxes: Box[] = [];
  const targets: Target[] = [];
  const bookmarks: Bookmark[] = [];
  for (const { slug, line } of sheet.slugs) {
    const top = HEAD + line * LINE;
    if (slug.target) targets.push({ name: slug.target, y: top });
    if (slug.bookmark) bookmarks.push({ ...slug.bookmark, y: top });
    if (slug.beside) boxes.push(...slug.beside.boxes.map((box) => besideText(box, side, top)));
    boxes.push(...slug.boxes.map((box) => moved(box, leftOf(slug.area, side), top)));
  }
  boxes.push(...runningFoot(sheet, number, side, measure));
  return { number, side, boxes, targets, bookmarks };
}

export const placeSheets = (sheets: readonly Sheet[], measure: Measure): readonly Page[] =>
  sheets.map((sheet, i) => placeSheet(sheet, i + 1, measure));

/** The page each place to link to stands on. */
export function pagesOfTargets(pages: readonly Page[]): ReadonlyMap<string, number> {
  return new Map(pages.flatMap((page) => page.targets.map((target) => [target.name, page.number] as const)));
}
