/**
 * An author's lines made fit for a client: links into the author's folder lead nowhere in a booklet and are dropped, and
 * words in another language than the booklet's say which.
 */
import type { Line, Run } from '../model/prose.js';
import type { Subject } from './subject.js';

type Foreign = Pick<Subject, 'foreign'>;

const isAddress = (link: string): boolean => /^https?:\/\//.test(link);

export function bookletLine({ foreign }: Foreign, line: Line): Line {
  return line.map((run): Run => {
    const { link, ...rest } = run;
    return {
      ...rest,
      ...(link !== undefined && isAddress(link) ? { link } : {}),
      ...(foreign === undefined ? {} : { lang: foreign }),
    };
  });
}

export const bookletLines = (foreign: Foreign, lines: readonly Line[]): readonly Line[] =>
  lines.map((line) => bookletLine(foreign, line));

/** An author's own word or name as a line. */
export const namedLine = ({ foreign }: Foreign, text: string): Line =>
  text === '' ? [] : [{ text, strong: true, ...(foreign === undefined ? {} : { lang: foreign }) }];

/** A line that an author began after a word of ours: `Pick up: kneel first` stands alone as `Kneel first`. */
export function begunLine(foreign: Foreign, line: Line): Line {
  const [first, ...rest] = bookletLine(foreign, line);
  if (first === undefined) return line;
  const [letter = ''] = Array.from(first.text);
  return [{ ...first, text: letter.toUpperCase() + first.text.slice(letter.length) }, ...rest];
}
