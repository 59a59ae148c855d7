/**
 * Words into lines no wider than their column. Breaks at spaces and after hyphens; inside a word where its language
 * allows it and a line would else be left short, or where the word is wider than the column.
 */
import type { Line } from '../model/prose.js';
import { knownLines } from './known-lines.js';
import type { Measure } from './measure.js';
import { type SetLine, type Tag, type TextBox, tag as tagged } from './page.js';
import { BASELINE, LINE } from './sheet.js';
import { type StyleName, stylesOf } from './type-styles.js';

export interface StyledRun {
  readonly style: StyleName;
  readonly text: string;
  readonly tag?: Tag;
  readonly to?: string;
  /** BCP 47, where it is another language than the document's. */
  readonly lang?: string;
}

interface Fragment {
  readonly run: StyledRun;
  readonly text: string;
}
interface Word {
  readonly fragments: readonly Fragment[];
  /** The run whose space stands before the word; absent where no space does. */
  readonly space?: StyledRun;
}

/** Characters that order or join letters and show nothing: soft hyphen, joiners, direction marks, variation selectors. */
const UNSEEN = /\p{Cf}|\p{Variation_Selector}/gu;
const NO_BREAK = '\u00a0';

/** A load × reps may part before its ×, never after it; `2 × 16` and a figure and its unit do not part at all. */
const glued = (text: string): string =>
  text.replace(/(?<=\d) (?=×|(?:kg|lb|cm|m|s|min)\b)/gu, NO_BREAK).replace(/× /g, `×${NO_BREAK}`);

/** The text as it will be drawn: composed letters, plain spaces, nothing unseen. */
export const drawable = (text: string): string => glued(unglued(text));

const unglued = (text: string): string =>
  text
    .normalize('NFC')
    .replace(UNSEEN, '')
    .replace(/\u202f/g, NO_BREAK)
    .replace(/\u2010/g, '-')
    .replace(/[\s\p{Cc}]/gu, (space) => (space === NO_BREAK ? space : ' '));

/** An author's line in a style, its strong and emphasised words in the fitting faces. */
export function styledLine(line: Line, base: 'text' | 'note', tag?: Tag): readonly StyledRun[] {
  const runs = line.map((run) => ({
    style: run.strong ? (`${base}-strong` as const) : run.emphasis ? (`${base}-italic` as const) : base,
    text: run.text,
    ...(run.lang === undefined ? {} : { lang: run.lang }),
  }));
  return tag === undefined ? runs : taggedRuns(runs, tag);
}

/** All of them in one element; words of another language in an element of their own within it, that says which. */
export function taggedRuns(runs: readonly StyledRun[], tag: Tag): readonly StyledRun[] {
  const spans = new Map<string, Tag>();
  return runs.map((run) => {
    if (run.lang === undefined) return { ...run, tag };
    const span = spans.get(run.lang) ?? tagged('Span', tag, { lang: run.lang });
    spans.set(run.lang, span);
    return { ...run, tag: span };
  });
}

/** The language of a whole line, where all of it is in another than the document's. */
export function languageOf(line: Line): { readonly lang?: string } {
  const lang = line[0]?.lang;
  return lang === undefined || line.some((run) => run.lang !== lang) ? {} : { lang };
}

/** A hyphen or dash between letters may end a line; between figures it may not. */
const HYPHEN = /(?<=[\p{L})]-|\p{L}[–—])(?=\p{L})/u;

function wordsOf(runs: readonly StyledRun[]): readonly Word[] {
  const words: { fragments: Fragment[]; space?: StyledRun }[] = [];
  let space: StyledRun | undefined;
  let joins = false;
  for (const run of runs) {
    for (const part of drawable(run.text).split(/( +)/)) {
      if (part === '') continue;
      if (part.startsWith(' ')) {
        space = run;
        joins = false;
        continue;
      }
      part.split(HYPHEN).forEach((text, i) => {
        const last = words.at(-1);
        if (joins && i === 0 && last) last.fragments.push({ run, text });
        else words.push({ fragments: [{ run, text }], ...(space && i === 0 ? { space } : {}) });
        space = undefined;
        joins = true;
      });
    }
  }
  return words;
}

const sameBox = (a: StyledRun, b: StyledRun): boolean => a.style === b.style && a.tag === b.tag && a.to === b.to;

/** Neighbouring fragments of one style become one box, so that letters are shaped together. */
function merged(words: readonly Word[]): readonly Fragment[] {
  const whole: { run: StyledRun; text: string }[] = [];
  const put = (run: StyledRun, text: string): void => {
    const last = whole.at(-1);
    if (last && sameBox(last.run, run)) last.text += text;
    else whole.push({ run, text });
  };
  words.forEach((word, i) => {
    if (word.space && i > 0) put(whole.at(-1)?.run ?? word.space, ' ');
    for (const { run, text } of word.fragments) put(run, text);
  });
  return whole;
}

/** Fragment by fragment: the kerning between words is left out, so that a word need be shaped only once. */
const widthOfWord = (word: Word, measure: Measure): number =>
  word.fragments.reduce((sum, { run, text }) => sum + measure.width(run.style, text), 0);
const spaceBefore = (word: Word, measure: Measure): number => (word.space ? measure.width(word.space.style, ' ') : 0);

const spacedLike = (word: Word, first: Word): Word => (word.space ? { ...first, space: word.space } : first);

/** A word wider than its column, cut between letters. */
function cutWord(word: Word, width: number, measure: Measure): readonly Word[] {
  const pieces: Word[] = [];
  let held: Fragment[] = [];
  for (const { run, text } of word.fragments) {
    for (const letter of new Intl.Segmenter('en', { granularity: 'grapheme' }).segment(text)) {
      const longer = [...held, { run, text: letter.segment }];
      if (held.length > 0 && widthOfWord({ fragments: longer }, measure) > width) {
        pieces.push({ fragments: held });
        held = [{ run, text: letter.segment }];
      } else held = longer;
    }
  }
  if (held.length > 0) pieces.push({ fragments: held });
  const [first, ...others] = pieces;
  return first ? [spacedLike(word, first), ...others] : [];
}

/** At a no-break space: only for a text that would not fit its column otherwise. */
function parted(word: Word, width: number, measure: Measure): readonly Word[] {
  if (widthOfWord(word, measure) <= width) return [word];
  const looser = wordsOf(word.fragments.map(({ run, text }) => ({ ...run, text: text.replaceAll(NO_BREAK, ' ') })));
  const fitting = looser.flatMap((one) => (widthOfWord(one, measure) <= width ? [one] : cutWord(one, width, measure)));
  const [first, ...others] = fitting;
  return first ? [spacedLike(word, first), ...others] : [];
}

/** Running text is hyphenated; names, figures and headings are not. */
const HYPHENATED: ReadonlySet<StyleName> = new Set(['text', 'text-italic', 'note', 'note-italic', 'label']);
/** A line that leaves less than this of its column white is full enough: set ragged, it need not be filled further. */
const ZONE = 0.14;
/** Drawn as a hyphen, read as nothing. */
const SOFT_HYPHEN = '\u00ad';
/** Letters with at most signs around them. */
const LETTERS = /^(\P{L}*)(\p{L}+)(\P{L}*)$/u;

function languageWithin(of: Tag | undefined): string | undefined {
  return of?.lang ?? (of?.parent ? languageWithin(of.parent) : undefined);
}

const languageIn = ({ lang, tag }: StyledRun, { language }: Measure): string | undefined =>
  lang ?? languageWithin(tag) ?? language;

/** The beginning of a word that still fits, with its hyphen, and the rest of it; undefined where none does. */
function hyphenated(word: Word, room: number, measure: Measure): readonly [Word, Word] | undefined {
  const [only, ...others] = word.fragments;
  if (!only || others.length > 0 || only.run.to !== undefined || !HYPHENATED.has(only.run.style)) return undefined;
  const { run, text } = only;
  const [, before = '', letters = '', after = ''] = LETTERS.exec(text) ?? [];
  const parts = measure.partsOf(letters, languageIn(run, measure));
  for (let kept = parts.length - 1; kept > 0; kept -= 1) {
    const first = before + parts.slice(0, kept).join('') + SOFT_HYPHEN;
    if (measure.width(run.style, first) > room) continue;
    const rest = parts.slice(kept).join('') + after;
    return [spacedLike(word, { fragments: [{ run, text: first }] }), { fragments: [{ run, text: rest }] }];
  }
  return undefined;
}

function setLine(words: readonly Word[], next: Word | undefined, measure: Measure): SetLine {
  let x = 0;
  let lines = 1;
  const parts = merged(words);
  const boxes = parts.map(({ run, text }, i): TextBox => {
    const width = measure.width(run.style, text);
    const box: TextBox = {
      kind: 'text',
      style: run.style,
      x,
      y: BASELINE,
      width,
      text,
      endsAtSpace: i === parts.length - 1 && next?.space !== undefined,
      ...(run.tag ? { tag: run.tag } : {}),
      ...(run.to ? { to: run.to } : {}),
    };
    x += width;
    lines = Math.max(lines, stylesOf(measure.sheet)[run.style].lines);
    return box;
  });
  // A line two steps high stands half a step lower: its capitals then begin where those of the text would.
  const lowered = lines === 2 ? boxes.map((box) => ({ ...box, y: box.y + LINE / 2 })) : boxes;
  return { boxes: lowered, width: x, lines };
}

/** Lines under one another that are read as one text: each ends as a word does. */
export const readOn = (lines: readonly SetLine[]): readonly SetLine[] =>
  lines.map((line) => ({
    ...line,
    boxes: line.boxes.map((box, i) => (i === line.boxes.length - 1 ? { ...box, endsAtSpace: true } : box)),
  }));

/** A last line of one short word looks lost; so much of the column is enough company. */
const LONELY = 0.15;
const STEP = 4;

/** A paragraph whose last line is not one lonely word, if a narrower column mends that without one line more. */
export function layOutParagraph(runs: readonly StyledRun[], width: number, measure: Measure): readonly SetLine[] {
  const lines = layOutLines(runs, width, measure);
  const isLonely = (of: readonly SetLine[]): boolean => of.length > 1 && (of.at(-1)?.width ?? 0) < width * LONELY;
  if (!isLonely(lines)) return lines;
  for (let narrower = width - STEP; narrower > width * (1 - LONELY); narrower -= STEP) {
    const tried = layOutLines(runs, narrower, measure);
    if (tried.length > lines.length) break;
    if (!isLonely(tried)) return tried;
  }
  return lines;
}

/** Runs set in lines of at most `width` points, ragged right; `first` is taken off the first line. */
export function layOutLines(
  runs: readonly StyledRun[],
  width: number,
  measure: Measure,
  first = 0,
): readonly SetLine[] {
  return knownLines(
    runs,
    { width, first },
    measure.known,
    (run) => languageIn(run, measure),
    () => breakLines(runs, width, measure, first),
  );
}

function breakLines(runs: readonly StyledRun[], width: number, measure: Measure, first: number): readonly SetLine[] {
  const words = wordsOf(runs).flatMap((word) => parted(word, width - first, measure));
  const lines: { words: Word[] }[] = [];
  let held: Word[] = [];
  let used = 0;
  let hyphens = false;
  words.forEach((word, i) => {
    const room = lines.length === 0 ? width - first : width;
    const own = widthOfWord(word, measure);
    const longer = used + spaceBefore(word, measure) + own;
    if (held.length > 0 && longer > room) {
      // Never the last word, nor on two lines running.
      const left = room - used - spaceBefore(word, measure);
      const parted =
        i < words.length - 1 && !hyphens && room - used > width * ZONE ? hyphenated(word, left, measure) : undefined;
      hyphens = parted !== undefined;
      const [begun, rest] = parted ?? [undefined, word];
      lines.push({ words: begun ? [...held, begun] : held });
      held = [rest];
      used = widthOfWord(rest, measure);
    } else {
      held.push(word);
      used = held.length === 1 ? own : longer;
    }
  });
  if (held.length > 0) lines.push({ words: held });
  return lines.map((line, i) => setLine(line.words, lines[i + 1]?.words[0], measure));
}
