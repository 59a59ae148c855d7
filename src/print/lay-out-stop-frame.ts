/** The stop signs: black ink, a frame of two points, the word that stops; the one box in the booklet. */
import type { Line } from '../model/prose.js';
import { linesOf, paragraph, type Slug } from './lay-out-blocks.js';
import { styledLine } from './lay-out-lines.js';
import { dashed } from './lay-out-list.js';
import { type Box, moved, tag } from './page.js';
import type { Setting } from './setting.js';
import { LINE } from './sheet.js';

const FRAME = 2;
const PADDING = 9;

/** Heading, items behind dashes, and closing lines, in a frame that is never parted. */
export function layOutStopFrame(
  heading: string,
  items: readonly Line[],
  closing: readonly Line[],
  setting: Setting,
  role: 'H1' | 'H2' | 'H3' = 'H3',
): readonly Slug[] {
  const { measure } = setting;
  const column = { area: 'text', x: PADDING, width: measure.sheet.textWidth - 2 * PADDING } as const;
  const inner = [
    ...paragraph([{ style: 'exercise', text: heading, tag: tag(role) }], measure, column),
    ...dashed(items, measure, column),
    ...closing.flatMap((line) => paragraph(styledLine(line, 'text', tag('P')), measure, column)),
  ];
  const { linesOnPage, textWidth } = measure.sheet;
  return chunksOf(inner, linesOnPage - 1).map((chunk) => framed(chunk, textWidth));
}

/** A frame holds what a page holds; longer signs stand in two. */
function chunksOf(inner: readonly Slug[], most: number): readonly (readonly Slug[])[] {
  const chunks: Slug[][] = [[]];
  for (const slug of inner) {
    const last = chunks.at(-1) ?? [];
    if (linesOf(last) + slug.lines > most) chunks.push([slug]);
    else last.push(slug);
  }
  return chunks;
}

function framed(inner: readonly Slug[], width: number): Slug {
  const lines = linesOf(inner) + 1;
  const boxes: Box[] = [
    {
      kind: 'frame',
      x: FRAME / 2,
      y: FRAME / 2,
      width: width - FRAME,
      height: lines * LINE - FRAME,
      thickness: FRAME,
    },
  ];
  let line = 0;
  for (const slug of inner) {
    boxes.push(...slug.boxes.map((box) => moved(box, 0, line * LINE + LINE / 2)));
    line += slug.lines;
  }
  return { lines, area: 'text', boxes, withNext: false };
}
