/** Pages to write on. */
import type { RecordPart } from '../model/booklet.js';
import { marginSection } from './exercise-sections.js';
import { type Block, block, blocksLines, paragraph, title, writingField, writingLines } from './lay-out-blocks.js';
import { styledLine } from './lay-out-lines.js';
import type { Chapter } from './lay-out-pages.js';
import { tag } from './page.js';
import type { Setting } from './setting.js';
import { LINE, type Sheet } from './sheet.js';

export function layOutRecord(part: RecordPart, setting: Setting, target: string): Chapter {
  const { measure } = setting;
  const head: readonly Block[] = [
    block(title(part.title, measure, { tag: tag('H2'), target, level: 1 })),
    ...part.paragraphs.map((line) => block(paragraph(styledLine(line, 'text', tag('P')), measure), { before: 1 })),
  ];
  const count = wholePages(part.lines, blocksLines(head), measure.sheet);
  return {
    start: 'flow',
    running: part.title,
    blocks: [...head, block(writingLines(count, 'text', measure.sheet))],
  };
}

/** As many lines as are asked for; where they go over to another page, as many as fill it. */
function wholePages(asked: number, above: number, { linesOnPage, writingLine }: Sheet): number {
  const on = (lines: number): number => Math.floor((lines * LINE) / writingLine);
  const first = on(linesOnPage - above);
  return asked <= first ? asked : first + Math.ceil((asked - first) / on(linesOnPage)) * on(linesOnPage);
}

const HEADING_LINES = 2;

/** A page of notes, to bring the booklet to a whole number of folded sheets. */
export function layOutNotesPage(setting: Setting): Chapter {
  const { sheet } = setting.measure;
  const heading = paragraph([{ style: 'exercise', text: setting.labels.notes, tag: tag('P') }], setting.measure);
  return {
    start: 'page',
    running: setting.labels.notes,
    blocks: [block([...heading.slice(0, 1), writingField(sheet.linesOnPage - HEADING_LINES, 'text', sheet)])],
  };
}

/** Lines for notes on so much of a page as its words leave free. */
export const notesUnder =
  (setting: Setting): NonNullable<Chapter['rest']> =>
  (lines) =>
    marginSection(setting.labels.notes, [writingField(lines, 'text', setting.measure.sheet)], setting);
