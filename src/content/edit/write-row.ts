/** A row of a table in the manner of the rows that stand there: pipes, spaces, and the width of columns that are even. */
import { cellSpans } from '../../prose/parse-table.js';

/** A table's lines as written: its heads, the line under them, its rows. */
export interface TableLines {
  readonly head: string;
  readonly rule: string;
  readonly rows: readonly string[];
}

/** `cells` in the order of the columns, without spaces around them. */
export function writeRow({ head, rule, rows }: TableLines, cells: readonly string[]): string {
  const model = rows.at(-1) ?? head;
  const all = [head, rule, ...rows].map(piecesOf);
  const compact = cellSpans(model).length > 1 && !/(^|[^\\])\|[ \t]|[ \t]\|/.test(model.trim());
  const texts = cells.map((cell) => cell.replaceAll('|', '\\|'));
  const leading = /^\s*\|/.test(model) || !/^[\p{L}\d[]/u.test(texts[0] ?? '');
  const trailing = /\|\s*$/.test(model) || (texts.at(-1) ?? '') === '' || texts.length === 1;
  const ruleSpans = cellSpans(rule);
  const padded = texts.map((text, column) => {
    const mark = rule.slice(ruleSpans[column]?.start ?? 0, ruleSpans[column]?.end ?? 0);
    const bare = compact && !text.endsWith('\\') ? text : text === '' ? ' ' : ` ${text} `;
    const width = evenWidth(all.map((pieces) => pieces[column]));
    return width === undefined ? bare : padTo(bare, width, mark);
  });
  const line = `${leading ? '|' : ''}${padded.join('|')}${trailing ? '|' : ''}`;
  const indent = /^\s*/.exec(model)?.[0] ?? '';
  return indent + (leading ? line : line.trimStart()).replace(trailing ? /$^/ : /\s+$/, '');
}

/** What stands between the pipes, spaces and all. */
function piecesOf(line: string): readonly string[] {
  const pieces: string[] = [''];
  const text = line.trim().replace(/^\|/, '');
  let escaped = false;
  for (const letter of text) {
    if (letter === '|' && !escaped) pieces.push('');
    else pieces[pieces.length - 1] += letter;
    escaped = letter === '\\' && !escaped;
  }
  return pieces;
}

type Measure = (text: string) => number;
const MEASURES: readonly Measure[] = [(text) => Array.from(text).length, columnsOf];

/** How wide every cell of a column is, by letters or by what a screen shows; `undefined` where they differ. */
function evenWidth(pieces: readonly (string | undefined)[]): { width: number; measure: Measure } | undefined {
  for (const measure of MEASURES) {
    const widths = new Set(pieces.map((piece) => (piece === undefined ? -1 : measure(piece))));
    const [width] = widths;
    if (widths.size === 1 && width !== undefined && width > 0) return { width, measure };
  }
  return undefined;
}

/** On the side the mark under the head says; a text too wide stays as it is. */
function padTo(text: string, { width, measure }: { width: number; measure: Measure }, mark: string): string {
  const spare = width - measure(text);
  if (spare <= 0) return text;
  const [left, right] = [mark.startsWith(':'), mark.endsWith(':')];
  const before = right ? (left ? Math.floor(spare / 2) : spare) : 0;
  return ' '.repeat(before) + text + ' '.repeat(spare - before);
}

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });
const WIDE =
  /^[\u1100-\u115f\u2e80-\u303e\u3041-\u33ff\u3400-\u4dbf\u4e00-\u9fff\ua000-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6]|\p{Emoji_Presentation}/u;

/** Wide letters take two columns of a screen (Unicode, UAX #11). */
function columnsOf(text: string): number {
  let columns = 0;
  for (const { segment } of graphemes.segment(text)) columns += WIDE.test(segment) ? 2 : 1;
  return columns;
}
