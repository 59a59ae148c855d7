/** Marks of quotation in an author's line: taken off here, so that every page sets its own. */
import type { Line } from '../model/prose.js';

const OPENING = /^["“‘'„«]\s?/;
const CLOSING = /\s?["”’'“»]$/;

/** What is spoken, without the marks of quotation an author may or may not have set around it. */
export function unquoted(line: Line): Line {
  const first = line[0];
  const last = line.at(-1);
  if (!first || !last || !OPENING.test(first.text) || !CLOSING.test(last.text)) return line;
  return line.map((run) => {
    const opened = run === first ? run.text.replace(OPENING, '') : run.text;
    return { ...run, text: run === last ? opened.replace(CLOSING, '') : opened };
  });
}
