/**
 * A page as bytes make it, beside the same page with one kind of line end and no byte order mark, as it is parsed.
 * Changes are found in the one and made in the other, so that nothing but them is written anew.
 */
import { parseText, type SourceText } from '../../prose/source-text.js';

export interface PageText {
  /** As in the file. */
  readonly raw: string;
  readonly source: SourceText;
}

/** Part of the parsed text, and what stands there instead; `\n` becomes the line end used there. */
export interface Splice {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

export const openPage = (raw: string): PageText => ({ raw, source: parseText('', raw) });

/** The raw text with the splices made, which may not overlap. */
export function spliced({ raw, source }: PageText, splices: readonly Splice[]): string {
  const marks = marksOf(raw);
  const rawOffset = (at: number): number => {
    const line = lineOf(source, at);
    return (marks[line]?.start ?? raw.length) + at - (source.lineStarts[line] ?? 0);
  };
  let made = '';
  let done = 0;
  for (const { start, end, text } of [...splices].sort((a, b) => a.start - b.start || a.end - b.end)) {
    const from = rawOffset(start);
    made += raw.slice(done, from) + text.replaceAll('\n', lineEndAt(source, marks, start));
    done = Math.max(from, rawOffset(end));
  }
  return made + raw.slice(done);
}

interface Mark {
  readonly start: number;
  readonly lineEnd: string;
}

/** Each line's beginning in the raw text, and how it ends. */
function marksOf(raw: string): readonly Mark[] {
  const marks: Mark[] = [];
  let start = raw.startsWith('\ufeff') ? 1 : 0;
  for (const { 0: lineEnd, index } of raw.matchAll(/\r\n?|\n/g)) {
    marks.push({ start, lineEnd });
    start = index + lineEnd.length;
  }
  return [...marks, { start, lineEnd: '' }];
}

/** 0-based line of an offset. */
function lineOf({ lineStarts }: SourceText, at: number): number {
  let [low, high] = [0, lineStarts.length - 1];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((lineStarts[middle] ?? 0) <= at) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** New lines end as the one before them does. */
function lineEndAt(source: SourceText, marks: readonly Mark[], at: number): string {
  const line = lineOf(source, at);
  const before = source.lineStarts[line] === at ? line - 1 : line;
  return [marks[before], marks[before - 1], marks[line]].find((mark) => mark && mark.lineEnd !== '')?.lineEnd ?? '\n';
}

/** The lines after a 1-based line; 0 is before the first. A page without a last line end stays so. */
export function insertLines({ text, lineStarts }: SourceText, after: number, lines: readonly string[]): Splice {
  const at = lineStarts[after];
  if (at === undefined) return { start: text.length, end: text.length, text: `\n${lines.join('\n')}` };
  return { start: at, end: at, text: `${lines.join('\n')}\n` };
}

/** Takes a 1-based line out, with its line end or, of the last, with the one before. */
export function removeLine({ text, lineStarts }: SourceText, line: number): Splice {
  const start = lineStarts[line - 1] ?? text.length;
  const end = lineStarts[line];
  if (end === undefined) return { start: Math.max(0, start - 1), end: text.length, text: '' };
  return { start, end, text: '' };
}
