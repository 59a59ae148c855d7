/** Contents: every part with its page, its page first, to turn to or to click. */
import type { Booklet, Part } from '../model/booklet.js';
import { type Block, block, linesOf, type Slug, title } from './lay-out-blocks.js';
import { layOutLines } from './lay-out-lines.js';
import type { Chapter } from './lay-out-pages.js';
import { notesUnder } from './lay-out-record.js';
import { moved, type TextBox, tag } from './page.js';
import { exerciseTarget, pageNumber, partTarget, type Setting } from './setting.js';
import { BASELINE } from './sheet.js';

/** Where a part is found; a cover is not listed. */
function entryOf(
  part: Part,
  index: number,
): { readonly text: string; readonly target: string; readonly strong: boolean } | undefined {
  switch (part.kind) {
    case 'cover':
      return undefined;
    case 'exercise':
      return { text: part.title, target: exerciseTarget(part.id), strong: false };
    case 'session':
      return { text: part.title, target: partTarget(index), strong: true };
    case 'how-to':
    case 'safety':
    case 'calendar':
    case 'partner':
    case 'record':
      return { text: part.title, target: partTarget(index), strong: false };
  }
}

const PAGE_ROOM = 26;

export function layOutContents(booklet: Booklet, setting: Setting): Chapter {
  const { measure } = setting;
  const list = tag('L');
  const entries = booklet.parts.flatMap((part, i) => entryOf(part, i) ?? []);
  const slugs = entries.flatMap(({ text, target, strong }): readonly Slug[] => {
    const link = tag('Link', tag('LBody', tag('LI', list)));
    const number = pageNumber(setting, target);
    const width = measure.width('label-strong', number);
    const numberBox: TextBox = {
      kind: 'text',
      style: 'label-strong',
      x: measure.width('label-strong', '00') - width,
      y: BASELINE,
      width,
      text: number,
      tag: link,
      to: target,
      endsAtSpace: true,
    };
    const lines = layOutLines(
      [{ style: strong ? 'text-strong' : 'text', text, tag: link, to: target }],
      measure.sheet.textWidth - PAGE_ROOM,
      measure,
    );
    return lines.map((line, i) => ({
      lines: 1,
      area: 'text',
      boxes: [...(i === 0 ? [numberBox] : []), ...line.boxes.map((box) => moved(box, PAGE_ROOM, 0))],
      withNext: i < lines.length - 1,
    }));
  });
  const heading = title(setting.labels.contents, measure, { tag: tag('H2'), target: 'contents', level: 1 });
  // A last entry alone on another page is worse than a heading set close.
  const close = linesOf([...heading, ...slugs]) === measure.sheet.linesOnPage;
  const blocks: readonly Block[] = [block(heading), block(slugs, { before: close ? 0 : 1 })];
  return { start: 'flow', running: setting.labels.contents, blocks, rest: notesUnder(setting) };
}
