/** An author's lines made fit for a client: links into the author's folder lead nowhere in a booklet and are dropped. */
import type { Line, Run } from '../model/prose.js';

const isAddress = (link: string): boolean => /^https?:\/\//.test(link);

export function bookletLine(line: Line): Line {
  return line.map((run): Run => {
    if (run.link === undefined || isAddress(run.link)) return run;
    const { link: _dropped, ...rest } = run;
    return rest;
  });
}

export const bookletLines = (lines: readonly Line[]): readonly Line[] => lines.map(bookletLine);

/** A line that an author began after a word of ours: `Pick up: kneel first` stands alone as `Kneel first`. */
export function begunLine(line: Line): Line {
  const [first, ...rest] = bookletLine(line);
  if (first === undefined) return line;
  const [letter = ''] = Array.from(first.text);
  return [{ ...first, text: letter.toUpperCase() + first.text.slice(letter.length) }, ...rest];
}
