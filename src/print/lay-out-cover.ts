/** The cover: what is to be known first, whose booklet it is, its weeks as strokes to come, and that it is not medical advice. */
import type { CoverPart, Notice } from '../model/booklet.js';
import { plainLine } from '../model/prose.js';
import { layOutCode } from './code.js';
import { type Block, block, linesOf, lowered, paragraph, rule, type Slug, withNext } from './lay-out-blocks.js';
import type { Chapter } from './lay-out-pages.js';
import { layOutStopFrame } from './lay-out-stop-frame.js';
import { layOutFeet } from './lay-out-tally.js';
import { type Box, moved, tag } from './page.js';
import type { Setting } from './setting.js';
import { LINE } from './sheet.js';
import type { StyleName } from './type-styles.js';

/** Empty lines: above the first, between what belongs together, and round the strokes. */
interface Spaces {
  readonly top: number;
  readonly near: number;
  readonly wide: number;
}
/** From roomy to close; large print of many lines has no room to give away. */
const SPACES: readonly Spaces[] = [
  { top: 5, near: 1, wide: 2 },
  { top: 3, near: 1, wide: 2 },
  { top: 2, near: 1, wide: 1 },
  { top: 1, near: 1, wide: 1 },
  { top: 0, near: 1, wide: 1 },
  { top: 0, near: 0, wide: 0 },
];
/** One stroke a week, large enough to be the picture of the cover. */
const TALLY_SCALE = 2;
const TALLY_LINES = 3;

/** Between two fine rules; a booklet that was withdrawn says so in the frame of the stop signs. */
function layOutNotice({ kind, title, lines }: Notice, setting: Setting): readonly Slug[] {
  if (kind === 'withdrawn') return layOutStopFrame(title, lines.map(plainLine), [], setting, 'H1').map(kept);
  const { measure } = setting;
  const inner = [
    ...paragraph([{ style: 'text-strong', text: title, tag: tag('P') }], measure),
    ...lines.flatMap((text) => paragraph([{ style: 'text', text, tag: tag('P') }], measure)),
  ];
  const edge: Slug = { lines: 1, area: 'text', boxes: [rule(0, LINE / 2, measure.sheet.textWidth)], withNext: true };
  return [edge, ...inner.map(kept), edge];
}

const kept = (slug: Slug): Slug => ({ ...slug, withNext: true });

export function layOutCover(cover: CoverPart, setting: Setting): Chapter {
  const { measure } = setting;
  const line = (style: StyleName, text: string, role: 'H1' | 'H2' | 'P' = 'P'): readonly Slug[] =>
    text === '' ? [] : withNext(paragraph([{ style, text, tag: tag(role) }], measure));
  // Of a booklet that was withdrawn, that is the first thing to be read.
  const first = cover.notice?.kind === 'withdrawn' ? 'H2' : 'H1';
  const name: readonly Slug[] = line('title', cover.client, first).map((slug, i) =>
    i === 0 ? { ...slug, bookmark: { title: cover.client, level: 1 } } : slug,
  );
  const tally: Slug = {
    lines: TALLY_LINES,
    area: 'text',
    boxes: layOutFeet(cover.weeks.length, 0, TALLY_LINES * LINE, TALLY_SCALE),
    withNext: true,
  };
  const notice = cover.notice === undefined ? [] : layOutNotice(cover.notice, setting);
  const upperWith = ({ top, near, wide }: Spaces): readonly Slug[] => [
    ...notice,
    gapSlug(notice.length === 0 ? top : Math.max(wide, top - linesOf(notice))),
    ...line('exercise', cover.title),
    ...name,
    gapSlug(near),
    ...line('text', cover.programme),
    ...line('text', cover.dates),
    gapSlug(wide),
    ...(cover.weeks.length === 0
      ? []
      : [tally, ...line('label', setting.words.strokeAWeek).map(lowered), gapSlug(near)]),
  ];
  const lower = [
    ...withCode(
      [...line('label-strong', cover.studio), ...line('label', cover.coach), ...line('label', cover.edition)],
      setting,
    ),
    gapSlug(1),
    ...line('note-italic', cover.notMedical),
  ];
  const uppers = SPACES.map(upperWith);
  const most = measure.sheet.linesOnPage - linesOf(lower);
  const upper = uppers.find((slugs) => linesOf(slugs) <= most) ?? uppers.at(-1) ?? [];
  const room = most - linesOf(upper);
  const blocks: readonly Block[] = [block([...upper, ...(room > 0 ? [gapSlug(room)] : []), ...lower])];
  return { start: 'page', running: '', blocks, bare: true };
}

/** The code of the booklet on the web at the right, over it what it is; the lines stand left of it, at its foot. */
function withCode(lines: readonly Slug[], { code, measure }: Setting): readonly Slug[] {
  if (code === undefined) return lines;
  const { sheet } = measure;
  const { boxes, size, quiet } = layOutCode(code.text, tag('Figure', undefined, { alt: code.caption }), sheet);
  const left = sheet.textWidth - size + quiet;
  const caption = paragraph([{ style: 'label', text: code.caption, tag: tag('P') }], measure, {
    area: 'text',
    x: left + quiet,
    width: size - 2 * quiet,
  });
  const high = Math.max(Math.ceil((size - quiet) / LINE) + linesOf(caption), linesOf(lines));
  const foot = high * LINE - size + quiet;
  return [
    {
      lines: high,
      area: 'text',
      boxes: [
        ...stacked(lines, (high - linesOf(lines)) * LINE),
        ...stacked(caption, foot + quiet - linesOf(caption) * LINE - 3),
        ...boxes.map((box) => moved(box, left, foot)),
      ],
      withNext: true,
    },
  ];
}

function stacked(slugs: readonly Slug[], top: number): readonly Box[] {
  let y = top;
  return slugs.flatMap((slug) => {
    const boxes = slug.boxes.map((box) => moved(box, 0, y));
    y += slug.lines * LINE;
    return boxes;
  });
}

const gapSlug = (lines: number): Slug => ({ lines, area: 'text', boxes: [], withNext: true });
