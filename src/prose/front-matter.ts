/** Where the front matter of a file ends and its body begins. The front matter itself is left to `content`. */
import type { SourceText } from './source-text.js';

export interface Fences {
  /** Of the text between the fences, in UTF-16 units; equal where it is empty. */
  readonly start: number;
  readonly end: number;
  /** 1-based line on which the body begins. */
  readonly bodyLine: number;
}

export type FenceFault = 'no-front-matter' | 'front-matter-open';

const FENCE = /^---[ \t]*$/;

/** The lines between the first line `---` and the next. Blank lines may stand before the first. */
export function parseFences(source: SourceText): Fences | FenceFault {
  const lines = source.lineStarts.length;
  const isFence = (line: number): boolean => {
    const start = source.lineStarts[line - 1] ?? 0;
    // A fence is short: a long line is not copied to be looked at.
    const next = (source.lineStarts[line] ?? source.text.length + 1) - 1;
    return next - start <= 80 && FENCE.test(source.text.slice(start, next));
  };
  let first = 1;
  while (first <= lines && isBlank(source, first)) first += 1;
  if (first > lines || !isFence(first)) return 'no-front-matter';
  for (let line = first + 1; line <= lines; line += 1) {
    if (!isFence(line)) continue;
    const start = source.lineStarts[first] ?? 0;
    return { start, end: Math.max(start, source.lineStarts[line - 1] ?? start), bodyLine: line + 1 };
  }
  return 'front-matter-open';
}

function isBlank(source: SourceText, line: number): boolean {
  const start = source.lineStarts[line - 1] ?? 0;
  const end = (source.lineStarts[line] ?? source.text.length + 1) - 1;
  return end - start <= 80 && source.text.slice(start, end).trim() === '';
}
