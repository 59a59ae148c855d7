/** Single changes to the sections of a page, each as splices of its text. What is written already changes nothing. */
import type { RowCells, TableSection, WhyNoEdit } from '../../model/edit.js';
import { plainText } from '../../model/prose.js';
import type { Block, Cell } from '../../prose/blocks.js';
import { parseBody } from '../../prose/parse-body.js';
import { lineText, parseText, type SourceText } from '../../prose/source-text.js';
import {
  type PagePart,
  type PageParts,
  type PartBlock,
  partNamed,
  placeForNew,
  type SectionName,
} from './page-parts.js';
import { insertLines, removeLine, type Splice } from './page-text.js';
import { writeRow } from './write-row.js';

export type BodyChange = readonly Splice[] | { readonly why: WhyNoEdit; readonly name: string };
type Table = Extract<Block, { kind: 'table' }>;

/** The columns of a table that is begun: those always there, and those written only where they are needed. */
const COLUMNS: Readonly<Record<TableSection, { readonly all: readonly string[]; readonly always: readonly string[] }>> =
  {
    'Signed off': { all: ['Exercise', 'Up to', 'Date', 'By'], always: ['Exercise', 'Up to', 'Date', 'By'] },
    Tests: {
      all: ['Exercise', 'Side', 'Load', 'Reps', 'Reserve', 'Date', 'In a circuit'],
      always: ['Exercise', 'Side', 'Load', 'Reps', 'Reserve', 'Date'],
    },
    Observations: { all: ['Date', 'Exercise', 'Side', 'Seen'], always: ['Date', 'Exercise', 'Side', 'Seen'] },
  };

const sameHead = (one: string, other: string): boolean => one.trim().toLowerCase() === other.trim().toLowerCase();

/** Spaces side by side count as one, as where a cell is read. */
const inOneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** Cells in the order of these heads, and a heading that none of them is. */
export function cellsUnder(
  heads: readonly string[],
  cells: RowCells,
): readonly string[] | { readonly missing: string } {
  const written = Object.entries(cells).filter(([, text]) => text.trim() !== '');
  const missing = written.find(([name]) => !heads.some((head) => sameHead(head, name)));
  if (missing) return { missing: missing[0] };
  const used = new Set<string>();
  return heads.map((head) => {
    // Of two columns of one name the first is read.
    const found = written.find(([name]) => sameHead(name, head) && !used.has(name));
    if (found) used.add(found[0]);
    return inOneLine(found?.[1] ?? '');
  });
}

const headsOf = (table: Table): readonly string[] => table.head.map((cell) => plainText(cell.line));

export const newHeads = (section: TableSection, cells: RowCells): readonly string[] => {
  const { all, always } = COLUMNS[section];
  const wanted = (head: string) => Object.entries(cells).some(([name, text]) => text.trim() && sameHead(name, head));
  return all.filter((head) => always.includes(head) || wanted(head));
};

const tableIn = (part: PagePart | undefined): { block: Table; at: PartBlock } | undefined => {
  for (const at of part?.blocks ?? []) if (at.block.kind === 'table') return { block: at.block, at };
  return undefined;
};

export function addRow(source: SourceText, parts: PageParts, section: TableSection, cells: RowCells): BodyChange {
  const part = partNamed(parts, section);
  const found = tableIn(part);
  const heads = found ? headsOf(found.block) : newHeads(section, cells);
  const texts = cellsUnder(heads, cells);
  if ('missing' in texts) return { why: 'no-column', name: texts.missing };
  if (!found) {
    const row = (all: readonly string[]): string => `|${all.map((text) => (text ? ` ${text} ` : ' ')).join('|')}|`;
    const written = texts.map((text) => text.replaceAll('|', '\\|'));
    return begin(source, parts, section, [row(heads), row(heads.map(() => '---')), row(written)]);
  }
  const { block } = found;
  if (block.rows.some((row) => rowSays(row.cells, texts))) return [];
  const last = Math.max(block.place.line + 1, ...block.rows.map((row) => row.place.line));
  const lines = {
    head: lineText(source, block.place.line),
    rule: lineText(source, block.place.line + 1),
    rows: block.rows.map((row) => lineText(source, row.place.line)),
  };
  return [insertLines(source, last, [writeRow(lines, texts)])];
}

/** Every cell as given; cells that are not there are empty. */
function rowSays(cells: readonly Cell[], texts: readonly string[]): boolean {
  return texts.every((text, column) => inOneLine(cells[column]?.raw ?? '') === text);
}

export function removeRow(
  source: SourceText,
  parts: PageParts,
  section: TableSection,
  line: number,
  says: RowCells | undefined,
): BodyChange {
  const table = tableIn(partNamed(parts, section))?.block;
  const row = table?.rows.find(({ place }) => place.line === line);
  if (says) {
    const meant = (cells: readonly Cell[]): boolean => table !== undefined && saysSo(headsOf(table), cells, says);
    if (!row || !meant(row.cells)) {
      return table?.rows.some(({ cells }) => meant(cells)) ? { why: 'says-otherwise', name: section } : [];
    }
  }
  return row ? [removeLine(source, line)] : { why: 'no-such-row', name: section };
}

function saysSo(heads: readonly string[], cells: readonly Cell[], says: RowCells): boolean {
  return Object.entries(says).every(([name, text]) => {
    const column = heads.findIndex((head) => sameHead(head, name));
    return inOneLine(cells[column]?.raw ?? '') === inOneLine(text);
  });
}

/** The text as one paragraph of Markdown; `undefined` where it is anything else. */
export function sentenceOf(text: string): Extract<Block, { kind: 'paragraph' }> | undefined {
  const { blocks, unprinted } = parseBody(parseText('', text.trim()), 1);
  const [only] = blocks;
  return blocks.length === 1 && unprinted.length === 0 && only?.kind === 'paragraph' ? only : undefined;
}

export function replaceLine(source: SourceText, parts: PageParts, section: 'Work on this', words: string): BodyChange {
  const text = words.trim();
  const sentence = sentenceOf(text);
  if (!sentence) return { why: 'not-one-line', name: section };
  const part = partNamed(parts, section);
  const first = part?.blocks.find(({ block }) => block.kind === 'paragraph' || block.kind === 'list');
  if (!part || !first) return begin(source, parts, section, [text]);
  const { block } = first;
  const item = block.kind === 'list' ? block.items[0] : undefined;
  const old = block.kind === 'paragraph' ? block.words : item;
  if (!old) return { why: 'form', name: section };
  if (JSON.stringify(old.line) === JSON.stringify(sentence.words.line)) return [];
  const lineStart = source.lineStarts[old.place.line - 1] ?? 0;
  const before = Array.from(lineText(source, old.place.line))
    .slice(0, old.place.column - 1)
    .join('');
  const end = block.kind === 'paragraph' ? first.end : lastOfItem(source, first, old.place.line);
  const lastText = lineText(source, end);
  const endAt = (source.lineStarts[end - 1] ?? 0) + lastText.trimEnd().length;
  return [{ start: lineStart + before.length, end: endAt, text }];
}

/** An item's words go on in lines set in, up to the next item or an empty line. */
function lastOfItem(source: SourceText, { end }: PartBlock, from: number): number {
  let line = from;
  while (line < end && !/^\s*($|[-+*]\s|\d+[.)]\s)/.test(lineText(source, line + 1))) line += 1;
  return line;
}

/** Under the section's heading, or under a heading of its own where the format has it. */
function begin(source: SourceText, parts: PageParts, name: SectionName, lines: readonly string[]): BodyChange {
  const part = partNamed(parts, name);
  const place = placeForNew(parts, name);
  const after = part?.headEnd ?? place.after;
  const next = after + 1 <= source.lineStarts.length ? lineText(source, after + 1) : '';
  const heading = part ? [] : ['', `${'#'.repeat(place.level)} ${name}`];
  const gap = next.trim() === '' ? [] : [''];
  return [insertLines(source, after, [...heading, '', ...lines, ...gap])];
}
