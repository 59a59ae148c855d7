/** Blocks into pages: what stays together, what begins a page, and the running foot. The words are laid out already. */
import type { Block, Slug } from './lay-out-blocks.js';
import { blocksLines, linesOf } from './lay-out-blocks.js';
import type { Measure } from './measure.js';
import { type Bookmark, type Box, moved, type Page, type Target, type TextBox } from './page.js';
import { BASELINE, LINE, leftOf, type PageSide, type Sheet, sideOf, widthOf } from './sheet.js';

/** Blocks that share a running foot and a rule for where they begin. */
export interface Chapter {
  /** `flow`: on the same page as the chapter before it, if all of it fits there. */
  readonly start: 'page' | 'even' | 'flow';
  /** On a left-hand page all the same, so that no leaf is turned in it: what may not be read apart, or what is better not. */
  readonly opening?: 'needed' | 'better';
  readonly running: string;
  readonly blocks: readonly Block[];
  /** Set again at the head of every further page of the chapter. */
  readonly carried?: readonly Slug[];
  /** A page without a number, like a cover. */
  readonly bare?: true;
  /** So many lines of a page on which little was carried over, for the reader's own use. */
  readonly rest?: (lines: number) => readonly Slug[];
}

interface Filled {
  used: number;
  /** Lines there are. */
  readonly lines: number;
  readonly slugs: { readonly slug: Slug; readonly line: number }[];
  running: string;
  bare: boolean;
}

const emptyPage = (lines: number, running: string, bare = false): Filled => ({
  used: 0,
  lines,
  slugs: [],
  running,
  bare,
});

/** Text goes back to the grid after lines to write on, which stand 8 mm apart. */
const onGrid = (used: number, next: Slug | undefined): number =>
  next && Number.isInteger(next.lines) ? Math.ceil(used - ROUNDING) : used;
const ROUNDING = 1e-6;

const fits = (page: Filled, slugs: readonly Slug[], gap = 0): boolean =>
  onGrid(page.used, slugs[0]) + gap + linesOf(slugs) <= page.lines + ROUNDING;

function put(page: Filled, slugs: readonly Slug[]): void {
  for (const slug of slugs) {
    page.used = onGrid(page.used, slug);
    page.slugs.push({ slug, line: page.used });
    page.used += slug.lines;
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

/** A block under so many empty lines; nothing else of it hangs on where it stands. */
function crowned({ slugs: [first, ...others], over }: Pick<Block, 'slugs' | 'over'>, white: number): readonly Slug[] {
  if (first === undefined) return [];
  return [over === undefined ? first : { ...first, boxes: [...over(white), ...first.boxes] }, ...others];
}

/** The block and those joined to it, one under the other. */
function runLines(blocks: readonly Block[], from: number): number {
  const next = blocks.slice(from + 1).findIndex(({ joined }) => !joined);
  return blocksLines(blocks.slice(from, next === -1 ? undefined : from + 1 + next));
}

function fillChapter(chapter: Chapter, pages: Filled[], lines: number): void {
  const carried = chapter.carried ?? [];
  const head = linesOf(carried);
  const fresh = (apart = false): Filled => {
    const page = emptyPage(lines, chapter.running, chapter.bare === true);
    if (!apart) put(page, carried);
    pages.push(page);
    return page;
  };
  let page = pages.at(-1) ?? fresh();
  /** Under what is carried over, the white that a block asks for is given where it has room. */
  const begin = (block: Block, whole: number, apart = false): void => {
    page = fresh(apart);
    const white = page.used > 0 && whole + head + block.before <= lines ? block.before : 0;
    page.used += white;
    put(page, crowned(block, white));
  };
  for (const [at, block] of chapter.blocks.entries()) {
    const gap = page.used === 0 ? 0 : block.before;
    const height = linesOf(block.slugs);
    const run = block.joined ? height : runLines(chapter.blocks, at);
    const isRun = run > height && page.used + gap + run > lines;
    const isKept = isRun && run <= lines - head;
    // What needs two pages begins on the left one, so that no leaf is turned in it.
    const isOpened = isRun && page.used > head && run <= 2 * (lines - head) && sideOf(pages.length) === 'recto';
    const turns = (block.breakBefore || isKept || isOpened) && page.used > 0;
    const isTall = height > lines - head;
    if (turns && !isTall) {
      begin(block, isKept ? run : height, block.apart);
    } else if (fits(page, block.slugs, gap)) {
      page.used += gap;
      put(page, crowned(block, gap));
    } else if (block.whole && !isTall) {
      begin(block, height, block.apart);
    } else {
      if (turns) page = fresh();
      if (page.used > 0) page.used = Math.min(page.used + gap, lines);
      const [first = [], ...units] = unitsOf(block.slugs);
      let apart = block.apart === true;
      const next = (): Filled => {
        const under = fresh(apart);
        apart = false;
        return under;
      };
      page = putUnit(first, page, next, head, { ...block, before: gap });
      for (const unit of units) page = putUnit(unit, page, fresh, head);
    }
  }
}

const BARE: Pick<Block, 'before' | 'over'> = { before: 0 };

/** `white`: how much of it the page has above the unit already, and what is drawn in it. */
function putUnit(
  unit: readonly Slug[],
  page: Filled,
  fresh: () => Filled,
  head: number,
  { before, over }: Pick<Block, 'before' | 'over'> = BARE,
): Filled {
  const set = (white: number): readonly Slug[] =>
    crowned({ slugs: unit, ...(over === undefined ? {} : { over }) }, white);
  if (fits(page, unit)) {
    put(page, set(before));
    return page;
  }
  // What no page can hold begins where nothing stands yet, so that no page is left empty before it.
  let on = page.used === 0 ? page : fresh();
  if (linesOf(unit) <= page.lines - head) {
    put(on, set(0));
    return on;
  }
  // Taller than a page: there is no better place to part it than where the page ends.
  for (const slug of set(0)) {
    if (!fits(on, [slug])) on = fresh();
    put(on, [slug]);
  }
  return on;
}

/** Two empty lines part chapters that share a page. */
const BETWEEN_CHAPTERS = 2;

/** No more than this of a page is used: it looks empty. */
const LITTLE = 0.5;
/** Between what was carried over and what fills the rest. */
const BEFORE_REST = 2;

/** Whether a chapter stands on the page that the one before it ends on. */
const isShared = (chapter: Chapter | undefined, last: Filled | undefined): boolean =>
  chapter?.start === 'flow' &&
  last !== undefined &&
  !last.bare &&
  last.used > 0 &&
  last.used + BETWEEN_CHAPTERS + blocksLines(chapter.blocks) <= last.lines;

/** What is carried over to a page of its own does not leave it half empty. */
function fillRest({ rest }: Chapter, next: Chapter | undefined, pages: readonly Filled[], begun: number): void {
  const last = pages.at(-1);
  if (!rest || !last || pages.length <= begun || isShared(next, last) || last.used > last.lines * LITTLE) return;
  last.used = onGrid(last.used, undefined) + BEFORE_REST;
  put(last, rest(last.lines - last.used));
}

/** `filler` is a page of its own, put where a chapter has to wait for a left-hand page; `lines` stand on a page. */
export function fillPages(chapters: readonly Chapter[], filler: Chapter, lines: number): readonly Filled[] {
  const pages: Filled[] = [];
  for (const [i, chapter] of chapters.entries()) {
    const last = pages.at(-1);
    if (last && isShared(chapter, last)) last.used += BETWEEN_CHAPTERS;
    else {
      if (chapter.start === 'even' && pages.length % 2 === 0) {
        pages.push(emptyPage(lines, filler.running));
        fillChapter(filler, pages, lines);
      }
      pages.push(emptyPage(lines, chapter.running, chapter.bare === true));
    }
    const begun = pages.length;
    fillChapter(chapter, pages, lines);
    fillRest(chapter, chapters[i + 1], pages, begun);
  }
  return pages;
}

const FOLIO_GAP = 14;

/** Page number at the outer edge, what the page belongs to beside it. */
function runningFoot(page: Filled, number: number, side: PageSide, measure: Measure): readonly TextBox[] {
  const { sheet } = measure;
  if (page.bare) return [];
  const y = sheet.head + sheet.footLine * LINE + BASELINE;
  const folio = String(number);
  const folioWidth = measure.width('label-strong', folio);
  const titleWidth = measure.width('label', page.running);
  const left = leftOf('table', side, sheet);
  const right = left + widthOf('table', sheet);
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
  const room = widthOf('table', sheet) - FOLIO_GAP - measure.width('label-strong', '000');
  if (page.running === '' || titleWidth > room) return [folioBox];
  const x = side === 'verso' ? left + folioWidth + FOLIO_GAP : right - folioWidth - FOLIO_GAP - titleWidth;
  return [folioBox, at('label', page.running, x, titleWidth)];
}

/** In the margin words stand towards the text: flush left on a recto, flush right on a verso. */
function besideText(box: Box, side: PageSide, top: number, sheet: Sheet): Box {
  const width = box.kind === 'text' ? box.width : 0;
  const x = leftOf('margin', side, sheet) + (side === 'verso' ? widthOf('margin', sheet) - width - 2 * box.x : 0);
  return moved(box, x, top);
}

function placePage(page: Filled, number: number, measure: Measure): Page {
  const { sheet } = measure;
  const side = sideOf(number);
  const boxes: Box[] = [];
  const targets: Target[] = [];
  const bookmarks: Bookmark[] = [];
  for (const { slug, line } of page.slugs) {
    const top = sheet.head + line * LINE;
    if (slug.target) targets.push({ name: slug.target, y: top });
    if (slug.bookmark) bookmarks.push({ ...slug.bookmark, y: top });
    for (const box of slug.beside?.boxes ?? []) boxes.push(besideText(box, side, top, sheet));
    const left = leftOf(slug.area, side, sheet);
    for (const box of slug.boxes) boxes.push(moved(box, left, top));
  }
  boxes.push(...runningFoot(page, number, side, measure));
  return { number, side, boxes, targets, bookmarks };
}

export const placePages = (pages: readonly Filled[], measure: Measure): readonly Page[] =>
  pages.map((page, i) => placePage(page, i + 1, measure));

/** The page each place to link to stands on. */
export function pagesOfTargets(pages: readonly Filled[]): ReadonlyMap<string, number> {
  return new Map(
    pages.flatMap(({ slugs }, i) =>
      slugs.flatMap(({ slug: { target } }) => (target ? [[target, i + 1] as const] : [])),
    ),
  );
}
