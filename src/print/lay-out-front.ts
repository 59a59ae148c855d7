/** How to use the booklet, with the printed key of its marks; and how to stay safe. */
import type { HowToPart, SafetyPart } from '../model/booklet.js';
import {
  type Block,
  block,
  columnOf,
  hangingItem,
  paragraph,
  type Slug,
  title,
  together,
  withNext,
} from './lay-out-blocks.js';
import { styledLine } from './lay-out-lines.js';
import type { Chapter } from './lay-out-pages.js';
import { layOutStopFrame } from './lay-out-stop-frame.js';
import { layOutMark } from './lay-out-tally.js';
import { moved, tag } from './page.js';
import type { Setting } from './setting.js';
import { LINE, mm, TEXT_WIDTH } from './sheet.js';

const KEY_WIDTH = mm(14);
/** Where a key's stroke stands in its two lines, leaving room for a letter beneath. */
const KEY_FOOT = 20;

export function layOutHowTo(part: HowToPart, setting: Setting, target: string): Chapter {
  const { measure } = setting;
  const list = tag('L');
  const key = part.key.map(({ mark, text }): Slug => {
    const item = tag('LI', list);
    const figure = tag('Figure', tag('Lbl', item), { alt: mark });
    const words = paragraph([{ style: 'text', text, tag: tag('LBody', item) }], measure, columnOf('text', KEY_WIDTH));
    const top = words.length === 1 ? LINE / 2 : 0;
    return {
      lines: Math.max(2, words.length),
      area: 'text',
      boxes: [
        ...layOutMark(mark, 0, KEY_FOOT, measure, figure),
        ...words.flatMap((line, n) => line.boxes.map((box) => moved(box, 0, top + n * LINE))),
      ],
      withNext: true,
    };
  });
  const paragraphs = part.paragraphs.map((line) =>
    block(paragraph(styledLine(line, 'text', tag('P')), measure), { before: 0 }),
  );
  return {
    start: 'flow',
    running: part.title,
    blocks: [
      block(title(part.title, measure, { tag: tag('H2'), target, level: 1 })),
      ...paragraphs.map((one) => ({ ...one, before: 1 })),
      block(together(key), { whole: true, before: 1 }),
    ],
  };
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
      Math.min(DEGREE_WIDTH, TEXT_WIDTH / 2),
      measure,
    );
  });
  const paragraphs: readonly Block[] = part.paragraphs.map((line) =>
    block(paragraph(styledLine(line, 'text', tag('P')), measure), { before: 1 }),
  );
  return {
    start: 'flow',
    running: part.title,
    blocks: [
      block(title(part.title, measure, { tag: tag('H2'), target, level: 1 })),
      block(frame, { whole: true, before: 1 }),
      ...(part.pain.length > 0 ? [block([...heading, ...together(pain)], { whole: true, before: 1 })] : []),
      ...paragraphs,
    ],
  };
}
