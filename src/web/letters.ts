/**
 * Which characters stand together in one file of a face. Latin is always at hand; the others are files of their own,
 * asked for only by a page that needs them. A letter in none of them falls to the phone's own faces.
 */
export type LetterSet = 'latin' | 'vietnamese' | 'greek' | 'cyrillic';

type Range = readonly [number, number];
const one = (codePoint: number): Range => [codePoint, codePoint];

/** Unicode blocks and parts of blocks, by code point; no character stands in two sets. */
const LETTERS: Readonly<Record<LetterSet, readonly Range[]>> = {
  latin: [
    // Basic Latin, Latin-1 (with × and ÷), Latin Extended-A, Romanian, dashes, quotes, signs.
    ...([
      [0x20, 0x7e],
      [0xa0, 0x17f],
      [0x218, 0x21b],
      [0x2010, 0x2015],
      [0x2018, 0x201e],
    ] as const),
    ...[0x2009, 0x2022, 0x2026, 0x202f, 0x2030, 0x2032, 0x2033, 0x2039, 0x203a, 0x2044, 0x20ac, 0x2212].map(one),
    ...[0x2248, 0x2264, 0x2265].map(one),
  ],
  vietnamese: [
    [0x1a0, 0x1a1],
    [0x1af, 0x1b0],
    [0x300, 0x301],
    [0x303, 0x304],
    one(0x309),
    one(0x323),
    [0x1ea0, 0x1ef9],
  ],
  greek: [[0x384, 0x38a], one(0x38c), [0x38e, 0x3a1], [0x3a3, 0x3ce]],
  cyrillic: [
    [0x400, 0x45f],
    [0x490, 0x491],
  ],
};

export const LETTER_SETS: readonly LetterSet[] = ['latin', 'vietnamese', 'greek', 'cyrillic'];

export const charactersOf = (set: LetterSet): string =>
  LETTERS[set]
    .flatMap(([from, to]) => Array.from({ length: to - from + 1 }, (_, i) => String.fromCodePoint(from + i)))
    .join('');

/** As a style sheet writes it: `U+20-7E,U+A0-17F`. */
export function unicodeRangeOf(set: LetterSet): string {
  const hex = (n: number): string => n.toString(16).toUpperCase();
  return LETTERS[set].map(([from, to]) => `U+${hex(from)}${from === to ? '' : `-${hex(to)}`}`).join(',');
}

/** The sets a text needs, in their stated order; Latin always. */
export function letterSetsIn(text: string): readonly LetterSet[] {
  const beyond = new Set(Array.from(text.matchAll(/[^\0-\u017f]/gu), ([character]) => character.codePointAt(0) ?? 0));
  const needed = (set: LetterSet): boolean =>
    [...beyond].some((point) => LETTERS[set].some(([from, to]) => point >= from && point <= to));
  return LETTER_SETS.filter((set) => set === 'latin' || needed(set));
}
