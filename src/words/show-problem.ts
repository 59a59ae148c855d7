/** Problems as a terminal shows them: where, how grave, what is wrong, the author's line with a caret, what to write instead. */
import type { Place } from '../model/place.js';
import type { Problem } from '../model/problem.js';
import { sayProblem } from './say-problem.js';
import { steadyLetters } from './steady-letters.js';

/** Most columns of an author's line that are shown; a longer line is cut around the caret. */
const WIDEST = 100;
const TAB = 4;

/**
 * One paragraph a problem, in the order given. `sourceOf` gives the text of a file, `undefined` where there is none.
 * Carets count what a terminal shows: a tab goes to the next fourth column, a wide letter takes two, a combining mark none.
 */
export function sayProblemReport(problems: readonly Problem[], sourceOf: (file: string) => string | undefined): string {
  const lines = new Map<string, readonly string[]>();
  const letters = rememberLast((line: string): readonly string[] => Array.from(line));
  const lineOf = ({ file, line }: Place): string | undefined => {
    let split = lines.get(file);
    if (!split) {
      split = (sourceOf(file) ?? '').replace(/^\ufeff/, '').split(/\r\n|\r|\n/);
      lines.set(file, split);
    }
    return split[line - 1];
  };
  return problems.map((problem) => `${showOne(problem, lineOf, letters)}\n`).join('\n');
}

/** Many problems stand in one line, and a line may be megabytes long: its letters are told apart once. */
function rememberLast<Value>(make: (text: string) => Value): (text: string) => Value {
  let last: { readonly text: string; readonly value: Value } | undefined;
  return (text) => {
    if (last?.text !== text) last = { text, value: make(text) };
    return last.value;
  };
}

function showOne(
  problem: Problem,
  lineOf: (place: Place) => string | undefined,
  lettersOf: (line: string) => readonly string[],
): string {
  const { message, hint } = sayProblem(problem);
  const { place } = problem;
  const where = place ? `${steadyLetters(place.file)}:${place.line}:${place.column}  ` : '';
  const head = `${where}${problem.severity}  ${problem.code}  ${forWhom(problem)}${message}`;
  const text = place && lineOf(place);
  const excerpt = place && text !== undefined && text.trim() !== '' ? excerptOf(lettersOf(text), place) : [];
  return [head, ...excerpt, ...(hint === '' ? [] : [`  write instead: ${hint}`])].join('\n');
}

/** Whom a problem concerns, where it does not stand in that client's own folder. */
const forWhom = ({ scope, place }: Problem): string =>
  scope.kind === 'client' && place?.file.startsWith(`clients/${scope.client}/`) !== true ? `For ${scope.client}: ` : '';

interface Glyph {
  readonly text: string;
  /** Columns it takes. */
  readonly width: number;
}

/** The line and the caret line under it. */
function excerptOf(letters: readonly string[], { column, length }: Place): readonly string[] {
  const before = glyphsOf(letters.slice(Math.max(0, column - 1 - FURTHEST), column - 1).join(''), 0);
  const start = widthOf(before);
  const marked = glyphsOf(letters.slice(column - 1, column - 1 + Math.min(length, FURTHEST)).join(''), start);
  const end = start + widthOf(marked);
  const after = glyphsOf(letters.slice(column - 1 + length, column - 1 + length + FURTHEST).join(''), end);
  const head = cutBefore(before, Math.max(20, WIDEST - 60));
  const room = Math.max(20, WIDEST - widthOf(head));
  const middle = cutAfter(marked, room);
  const tail = cutAfter(after, Math.max(0, room - widthOf(middle)));
  const text = [...head, ...middle, ...tail].map((glyph) => glyph.text).join('');
  const caret = ' '.repeat(widthOf(head)) + '^'.repeat(Math.max(1, widthOf(middle)));
  return [`  ${text.trimEnd()}`, `  ${caret}`];
}

const widthOf = (glyphs: readonly Glyph[]): number => glyphs.reduce((width, glyph) => width + glyph.width, 0);

const ELLIPSIS: Glyph = { text: '…', width: 1 };

/** The last columns of what stands before the caret. */
function cutBefore(glyphs: readonly Glyph[], room: number): readonly Glyph[] {
  if (widthOf(glyphs) <= room) return glyphs;
  const kept: Glyph[] = [];
  let width = 1;
  for (let at = glyphs.length - 1; at >= 0; at -= 1) {
    const glyph = glyphs[at] ?? ELLIPSIS;
    if (width + glyph.width > room) break;
    width += glyph.width;
    kept.unshift(glyph);
  }
  return [ELLIPSIS, ...kept];
}

function cutAfter(glyphs: readonly Glyph[], room: number): readonly Glyph[] {
  if (widthOf(glyphs) <= room) return glyphs;
  const kept: Glyph[] = [];
  let width = 1;
  for (const glyph of glyphs) {
    if (width + glyph.width > room) break;
    width += glyph.width;
    kept.push(glyph);
  }
  return [...kept, ELLIPSIS];
}

/** Most letters looked at on either side of a caret. */
const FURTHEST = 160;

const segments = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** The glyphs of a text that begins in this column. */
function glyphsOf(text: string, column: number): readonly Glyph[] {
  const glyphs: Glyph[] = [];
  let at = column;
  for (const { segment } of segments.segment(text)) {
    const glyph = segment === '\t' ? ' '.repeat(TAB - (at % TAB)) : steadyLetters(segment);
    const width = segment === '\t' ? glyph.length : widthOfGlyph(glyph);
    glyphs.push({ text: glyph, width });
    at += width;
  }
  return glyphs;
}

/** Wide in the sense of Unicode's East Asian Width (UAX #11), and emoji shown as pictures; a lone combining mark takes none. */
function widthOfGlyph(glyph: string): number {
  if (/^\p{M}+$/u.test(glyph) || /^[\u200b-\u200f\u2060]+$/u.test(glyph)) return 0;
  return /\p{Emoji_Presentation}|\ufe0f/u.test(glyph) || WIDE.test(glyph) ? 2 : 1;
}

const WIDE =
  /^[\u1100-\u115f\u2e80-\u303e\u3041-\u33ff\u3400-\u4dbf\u4e00-\u9fff\ua000-\ua4cf\ua960-\ua97f\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6\u{1b000}-\u{1b2ff}\u{20000}-\u{3fffd}]/u;
