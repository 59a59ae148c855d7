/** Cutting a line of words without losing what is strong, emphasised or a link. */
import { type Line, plainText, type Run } from '../model/prose.js';

/** The line from `start` to `end`, in UTF-16 units of its plain text. */
export function sliceLine(line: Line, start: number, end = Number.POSITIVE_INFINITY): Line {
  const runs: Run[] = [];
  let at = 0;
  for (const run of line) {
    const text = run.text.slice(Math.max(0, start - at), Math.max(0, end - at));
    if (text !== '') runs.push({ ...run, text });
    at += run.text.length;
  }
  return runs;
}

/** Without spaces around it. */
export function trimLine(line: Line): Line {
  const text = plainText(line);
  return sliceLine(line, text.length - text.trimStart().length, text.trimEnd().length);
}

/** The line before and after the first match of `separator`; `undefined` where there is none. */
export function cutLine(line: Line, separator: RegExp): { readonly before: Line; readonly after: Line } | undefined {
  const match = separator.exec(plainText(line));
  if (!match) return undefined;
  return {
    before: trimLine(sliceLine(line, 0, match.index)),
    after: trimLine(sliceLine(line, match.index + match[0].length)),
  };
}

/** Runs of one kind side by side become one. */
export function joinRuns(line: Line): Line {
  const joined: Run[] = [];
  for (const run of line) {
    const last = joined.at(-1);
    if (last && last.strong === run.strong && last.emphasis === run.emphasis && last.link === run.link) {
      joined[joined.length - 1] = { ...last, text: last.text + run.text };
    } else if (run.text !== '') joined.push(run);
  }
  return joined;
}
