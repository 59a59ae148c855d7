/**
 * Words shaped once, for measuring and for drawing, so that what was measured is what is drawn. No face here moves a
 * letter for the sake of a space beside it (`tests/print/faces.test.ts`), so a line is its words and spaces in a row, and
 * a booklet has far fewer words than lines.
 */
import type { Font, Glyph, GlyphPosition } from 'fontkit';

/** A word, or a space, in units of its face. The same object for the same word, as long as it is remembered. */
export interface ShapedWord {
  readonly glyphs: readonly Glyph[];
  readonly positions: readonly GlyphPosition[];
  readonly advance: number;
  /** The face sets every glyph on the line, one after the other. */
  readonly inLine: boolean;
}

export interface ShapedFace {
  /** In their order; spaces are words of their own. */
  readonly wordsOf: (text: string) => readonly ShapedWord[];
  /** In units of the face. */
  readonly advanceOf: (text: string) => number;
  readonly hasGlyph: (codePoint: number) => boolean;
}

/** Beyond this the words are forgotten: a run may be long, and names, dates and loads differ from booklet to booklet. */
const MOST_SHAPED = 8_000;

/** A hyphen with a glyph of its own, apart from the one an author types; and what a reader of the file takes it for. */
const HYPHEN = 0x2010;
const SOFT_HYPHEN = 0xad;
const drawn = (text: string): string =>
  text.replaceAll(String.fromCodePoint(SOFT_HYPHEN), String.fromCodePoint(HYPHEN));
/** The hyphen that parts a word is no letter of it: readers of the file are to join the word again. */
const named = (glyph: Glyph): Glyph =>
  glyph.codePoints[0] === HYPHEN ? Object.create(glyph, { codePoints: { value: [SOFT_HYPHEN] } }) : glyph;

const SPACE = ' ';

export function shapedFace(font: Font, features: readonly string[]): ShapedFace {
  const known = new Map<string, ShapedWord>();
  const glyphs = new Map<number, boolean>();
  const shape = (word: string): ShapedWord => {
    const { glyphs, positions, advanceWidth } = font.layout(drawn(word), [...features]);
    const inLine = positions.every(({ xOffset, yOffset }) => xOffset === 0 && yOffset === 0);
    return { glyphs: glyphs.map(named), positions, advance: advanceWidth, inLine };
  };
  const wordOf = (word: string): ShapedWord => {
    let shaped = known.get(word);
    if (!shaped) {
      shaped = shape(word);
      if (known.size >= MOST_SHAPED) known.clear();
      known.set(word, shaped);
    }
    return shaped;
  };
  const eachWord = (text: string, take: (word: ShapedWord) => void): void => {
    let from = 0;
    while (from < text.length) {
      const next = text.indexOf(SPACE, from);
      const to = next === -1 ? text.length : next === from ? from + 1 : next;
      take(wordOf(text.slice(from, to)));
      from = to;
    }
  };
  return {
    wordsOf: (text) => {
      const words: ShapedWord[] = [];
      eachWord(text, (word) => words.push(word));
      return words;
    },
    advanceOf: (text) => {
      let sum = 0;
      eachWord(text, ({ advance }) => {
        sum += advance;
      });
      return sum;
    },
    hasGlyph: (codePoint) => {
      const has = glyphs.get(codePoint) ?? font.hasGlyphForCodePoint(codePoint);
      glyphs.set(codePoint, has);
      return has;
    },
  };
}
