/** Table tokens → rows of cells with their places. Which columns there may be is left to `content`. */
import type { Block, Cell, TableRow, Unprinted } from './blocks.js';
import type { Span, Token } from './markdown.js';
import { type Anchor, parseSentence } from './parse-sentence.js';
import { endOfLine, lineText, placeIn, type SourceText } from './source-text.js';

type Table = Extract<Block, { kind: 'table' }>;

/** `tokens` are those between `table_open` and `table_close`; `lineOf` turns a token's line into the file's. */
export function parseTable(
  source: SourceText,
  tokens: readonly Token[],
  line: number,
  lineOf: (line: number) => number,
  unprinted: Unprinted[],
): Table {
  const rows: TableRow[] = [];
  let cells: Token[] = [];
  let rowLine = line;
  for (const token of tokens) {
    if (token.type === 'tr_open') {
      cells = [];
      rowLine = token.map ? lineOf(token.map[0]) : rowLine;
    } else if (token.type === 'inline') cells.push(token);
    else if (token.type === 'tr_close') rows.push(parseRow(source, cells, rowLine, unprinted));
  }
  const [head, ...rest] = rows;
  const start = source.lineStarts[line - 1] ?? 0;
  return { kind: 'table', head: head?.cells ?? [], rows: rest, place: placeIn(source, start, endOfLine(source, line)) };
}

function parseRow(source: SourceText, tokens: readonly Token[], line: number, unprinted: Unprinted[]): TableRow {
  const text = lineText(source, line);
  const lineStart = source.lineStarts[line - 1] ?? 0;
  const spans = cellSpans(text);
  const cells: Cell[] = tokens.map((token, index) => {
    const span = spans[index] ?? { start: text.length, end: text.length };
    const place = placeIn(source, lineStart + span.start, lineStart + span.end);
    const anchor: Anchor = {
      place,
      part: (part) => placeIn(source, lineStart + span.start + part.start, lineStart + span.start + part.end),
    };
    return { ...parseSentence(token, anchor, unprinted), raw: token.content };
  });
  // Cells beyond the head are dropped by the table rule; they are kept here, so that nothing vanishes.
  for (const span of spans.slice(tokens.length)) {
    const place = placeIn(source, lineStart + span.start, lineStart + span.end);
    cells.push({ line: [], links: [], place, raw: text.slice(span.start, span.end) });
  }
  return { cells, place: placeIn(source, lineStart, lineStart + text.length) };
}

/** Where each cell's trimmed text stands in its line: between pipes that no backslash escapes. */
export function cellSpans(text: string): readonly Span[] {
  const pieces: Span[] = [];
  const end = text.trimEnd().length;
  let start = text.length - text.trimStart().length;
  let escaped = false;
  for (let at = start; at < end; at += 1) {
    if (text[at] === '|' && !escaped) {
      pieces.push({ start, end: at });
      start = at + 1;
    }
    escaped = text[at] === '\\' && !escaped;
  }
  pieces.push({ start, end });
  const isEmpty = (span: Span | undefined): boolean => span !== undefined && span.start === span.end;
  if (isEmpty(pieces[0])) pieces.shift();
  if (isEmpty(pieces.at(-1))) pieces.pop();
  return pieces.map((span) => {
    const cell = text.slice(span.start, span.end);
    const from = span.start + Math.min(cell.length - cell.trimStart().length, Math.max(0, cell.length - 1));
    return cell.trim() === '' ? { start: from, end: from } : { start: from, end: from + cell.trim().length };
  });
}
