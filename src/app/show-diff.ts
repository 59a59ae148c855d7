/** The door to diff: what a change does to a page, as unified hunks for a terminal. */
import { structuredPatch } from 'diff';
import { steadyLetters } from '../words/steady-letters.js';

/** Of ECMA-48's graphic rendition; the signs in front say the same without them. */
const [BOLD, RED, GREEN, CYAN] = [1, 31, 32, 36];

/** Lines of a page shown around a change. */
const AROUND = 3;

/**
 * Head and hunks, each line ending in a line feed; empty where both texts say the same in the same lines. Line ends are
 * not shown: a change never touches those of other lines.
 */
export function diffOf(path: string, before: string, after: string, colour = false): string {
  const paint = (line: string, code: number | undefined): string =>
    `${colour && code !== undefined ? `\u001b[${code}m${shown(line)}\u001b[0m` : shown(line)}\n`;
  const { hunks } = structuredPatch(path, path, oneLineEnd(before), oneLineEnd(after), '', '', { context: AROUND });
  if (hunks.length === 0) return '';
  const told = hunks.map(({ oldStart, oldLines, newStart, newLines, lines }) => {
    const head = paint(`@@ -${spanOf(oldStart, oldLines)} +${spanOf(newStart, newLines)} @@`, CYAN);
    return (
      head + lines.map((line) => paint(line, line[0] === '-' ? RED : line[0] === '+' ? GREEN : undefined)).join('')
    );
  });
  return paint(`--- ${path}`, BOLD) + paint(`+++ ${path}`, BOLD) + told.join('');
}

/** Colours only where a person looks on: `NO_COLOR` set to anything turns them off (no-color.org). */
export function wantsColour(
  stream: { readonly isTTY?: boolean },
  env: Readonly<Record<string, string | undefined>>,
): boolean {
  return stream.isTTY === true && (env.NO_COLOR ?? '') === '' && env.TERM !== 'dumb';
}

/** Of no lines, the line they would come after (POSIX, `diff -u`). */
const spanOf = (start: number, lines: number): string => `${lines === 0 ? start - 1 : start},${lines}`;

const oneLineEnd = (text: string): string => text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');

/** Nothing an author writes may move the cursor or turn the line round. */
const shown = (text: string): string => text.split('\t').map(steadyLetters).join('\t');
