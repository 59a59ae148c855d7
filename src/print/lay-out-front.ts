/** How to use the booklet, with the printed key of its marks; and how to stay safe. */
import type { HowToPart, SafetyPart } from '../model/booklet.js';
import {
  type Block,
  blankSlug,
  block,
  blocksLines,
  HANG,
  hangingItem,
  lowered,
  paragraph,
  type Slug,
  slugsOf,
  title,
  together,
  withNext,
} from './lay-out-blocks.js';
import { layOutLines, type StyledRun, styledLine } from './lay-out-lines.js';
import { type Chapter, fillPages } from './lay-out-pages.js';
import { layOutStopFrame } from './lay-out-stop-frame.js';
import { layOutMark } from './lay-out-tally.js';
import type { Measure } from './measure.js';
import { type Box, moved, tag } from './page.js';
import type { Setting } from './setting.js';
import { LINE, mm, widthOf } from './sheet.js';

const KEY_WIDTH = mm(14);
/** Where a key's stroke stands in its two lines, leaving room for a letter beneath. */
const KEY_FOOT = 20;

/** The marks in so many columns, read down: so the letter under a mark never has a stroke right beneath it. */
function keySlugs(part: HowToPart, columns: 1 | 2, { measure, words }: Setting): readonly Slug[] {
  const list = tag('L');
  const width = measure.sheet.textWidth / columns;
  const perColumn = Math.ceil(part.key.length / columns);
  const laid = part.key.map(({ mark, text }, i) => {
    const x = Math.floor(i / perColumn) * width;
    const item = tag('LI', list);
    const figure = tag('Figure', tag('Lbl', item), { alt: words.marks[mark] });
    const column = { area: 'text', x: x + KEY_WIDTH, width: width - KEY_WIDTH } as const;
    const said = paragraph([{ style: 'text', text, tag: tag('LBody', item) }], measure, column);
    const top = said.length === 1 ? LINE / 2 : 0;
    const boxes: readonly Box[] = [
      ...layOutMark(mark, x, KEY_FOOT, measure, figure),
      ...said.flatMap((line, n) => line.boxes.map((box) => moved(box, 0, top + n * LINE))),
    ];
    return { row: i % perColumn, lines: Math.max(2, said.length), boxes };
  });
  if (columns === 1) return together(laid.map(({ lines, boxes }) => ({ lines, area: 'text', boxes, withNext: true })));
  const heights = Array.from({ length: perColumn }, (_, row) =>
    Math.max(...laid.filter((one) => one.row === row).map(({ lines }) => lines)),
  );
  const topOf = (row: number): number => heights.slice(0, row).reduce((sum, lines) => sum + lines, 0) * LINE;
  const boxes = laid.flatMap((one) => one.boxes.map((box) => moved(box, 0, topOf(one.row))));
  return [{ lines: topOf(perColumn) / LINE, area: 'text', boxes, withNext: false }];
}

/** From roomy to close: columns of the key, and the white between paragraphs in lines. */
const HOW_TO_ROOMS = [
  { columns: 1, white: 1 },
  { columns: 2, white: 1 },
  { columns: 1, white: 0.5 },
  { columns: 2, white: 0.5 },
  { columns: 2, white: 0 },
] as const;

/** With half a line between them, every other paragraph stands on the half step. */
function spaced(slugs: readonly Slug[], nth: number, white: number): Block {
  if (nth === 0) return block(slugs, { before: 1 });
  if (white !== 0.5) return block(slugs, { before: white });
  return nth % 2 === 0 ? block(slugs, { before: 1 }) : block(slugs.map(lowered), { before: 0 });
}

/** Without white between them, paragraphs after the first begin a little way in. */
function indented(runs: readonly StyledRun[], measure: Measure): readonly Slug[] {
  const lines = layOutLines(runs, widthOf('text', measure.sheet), measure, HANG);
  return slugsOf(lines, 'text').map((slug, i) =>
    i === 0 ? { ...slug, boxes: slug.boxes.map((box) => moved(box, HANG, 0)) } : slug,
  );
}

/** The key stands on the page that explains it, as long as the closest setting allows. */
export function layOutHowTo(part: HowToPart, setting: Setting, target: string): Chapter {
  const { measure } = setting;
  const heading = block(title(part.title, measure, { tag: tag('H2'), target, level: 1 }));
  const set = ({ columns, white }: (typeof HOW_TO_ROOMS)[number]): readonly Block[] => [
    heading,
    ...part.paragraphs.map((line, i) => {
      const runs = styledLine(line, 'text', tag('P'));
      return spaced(white === 0 && i > 0 ? indented(runs, measure) : paragraph(runs, measure), i, white);
    }),
    block(keySlugs(part, columns, setting), { whole: true, before: 1 }),
  ];
  const rooms = HOW_TO_ROOMS.map(set);
  const fitting = rooms.find((blocks) => blocksLines(blocks) <= measure.sheet.linesOnPage);
  return { start: 'flow', running: part.title, blocks: fitting ?? set(HOW_TO_ROOMS[0]) };
}

const DEGREE_WIDTH = mm(34);

export function layOutSafety(part: SafetyPart, setting: Setting, target: string): Chapter {
  const { measure } = setting;
  const frame = layOutStopFrame(
    part.emergencyTitle,
    part.emergency,
    part.call === '' ? [] : [[{ text: part.call, strong: true }]],
    setting,
  );
  const heading = withNext(paragraph([{ style: 'exercise', text: part.painTitle, tag: tag('H3') }], measure));
  const table = tag('Table');
  const pain = part.pain.flatMap(({ degree, text }) => {
    const row = tag('TR', table);
    return hangingItem(
      [{ style: 'text-strong', text: degree, tag: tag('TH', row, { scope: 'Row' }) }],
      [{ style: 'text', text, tag: tag('TD', row) }],
      Math.min(DEGREE_WIDTH, measure.sheet.textWidth / 2),
      measure,
    );
  });
  const paragraphs = part.paragraphs.map((line) => paragraph(styledLine(line, 'text', tag('P')), measure));
  const chapterOf = (said: readonly Block[]): Chapter => ({
    start: 'flow',
    running: part.title,
    blocks: [
      block(title(part.title, measure, { tag: tag('H2'), target, level: 1 })),
      block(frame, { whole: true, before: 1 }),
      ...(part.pain.length > 0 ? [block([...heading, ...together(pain)], { whole: true, before: 1 })] : []),
      ...said,
    ],
  });
  const roomy = chapterOf(paragraphs.map((slugs) => block(slugs, { before: 1 })));
  const close = chapterOf(inPairs(paragraphs));
  const pages = (chapter: Chapter): number => fillPages([chapter], chapter, measure.sheet.linesOnPage).length;
  // A last sentence alone on a page is not found: half the white goes where that keeps it with the others.
  return pages(close) < pages(roomy) ? close : roomy;
}

/** Half a line after each, so that every pair is back on the grid, wherever a page ends. */
const inPairs = (paragraphs: readonly (readonly Slug[])[]): readonly Block[] =>
  paragraphs.flatMap((first, i) => {
    if (i % 2 > 0) return [];
    const second = paragraphs[i + 1];
    const both = second ? [...first, ...second.map(lowered), blankSlug(1)] : first;
    return [block(both, { whole: true, before: i === 0 ? 1 : 0 })];
  });
