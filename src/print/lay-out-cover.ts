/** The cover: whose booklet it is, its weeks as strokes to come, and that it is not medical advice. */
import type { CoverPart } from '../model/booklet.js';
import { type Block, block, linesOf, paragraph, type Slug, withNext } from './lay-out-blocks.js';
import type { Chapter } from './lay-out-pages.js';
import { layOutFeet } from './lay-out-tally.js';
import { tag } from './page.js';
import type { Setting } from './setting.js';
import { LINE, LINES_ON_PAGE } from './sheet.js';
import type { StyleName } from './type-styles.js';

/** Empty lines above the first. */
const TOP = 5;
/** One stroke a week, large enough to be the picture of the cover. */
const TALLY_SCALE = 2;
const TALLY_LINES = 3;

export function layOutCover(cover: CoverPart, setting: Setting): Chapter {
  const { measure } = setting;
  const line = (style: StyleName, text: string, role: 'H1' | 'P' = 'P'): readonly Slug[] =>
    text === '' ? [] : withNext(paragraph([{ style, text, tag: tag(role) }], measure));
  const name: readonly Slug[] = line('title', cover.client, 'H1').map((slug, i) =>
    i === 0 ? { ...slug, bookmark: { title: cover.client, level: 1 } } : slug,
  );
  const tally: Slug = {
    lines: TALLY_LINES,
    area: 'text',
    boxes: layOutFeet(cover.weeks.length, 0, TALLY_LINES * LINE, TALLY_SCALE),
    withNext: true,
  };
  const upper = [
    ...line('exercise', cover.title),
    ...name,
    gapSlug(1),
    ...line('text', cover.programme),
    ...line('text', cover.dates),
    gapSlug(2),
    tally,
  ];
  const lower = [
    ...line('label-strong', cover.studio),
    ...line('label', cover.coach),
    ...line('label', cover.edition),
    gapSlug(1),
    ...line('note-italic', cover.notMedical),
  ];
  const room = LINES_ON_PAGE - TOP - linesOf(upper) - linesOf(lower);
  const blocks: readonly Block[] = [block([gapSlug(TOP), ...upper, ...(room > 0 ? [gapSlug(room)] : []), ...lower])];
  return { start: 'page', running: '', blocks, bare: true };
}

const gapSlug = (lines: number): Slug => ({ lines, area: 'text', boxes: [], withNext: true });
