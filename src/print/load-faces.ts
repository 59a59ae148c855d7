/**
 * The five faces, parsed once and shared by every booklet of a run. One shaping serves measuring and drawing, so
 * that what was measured is what is drawn. Nothing is loaded before it is asked for.
 */
import type { Font, Glyph, GlyphRun } from 'fontkit';
import { loadHyphenation, type PartWord } from './hyphenation.js';
import type { KnownLines } from './known-lines.js';
import type { Measure } from './measure.js';
import { A5_SHEET, type Sheet } from './sheet.js';
import { type Face, FEATURES, type StyleName, stylesOf } from './type-styles.js';

/** The faces, and where words set in them may part. */
export type Faces = Readonly<Record<Face, Font>> & { readonly partWord: PartWord };

/** Literata and Alegreya Sans, SIL Open Font Licence; whole fonts, so that Vietnamese, Greek and Cyrillic are there. */
const FILES: Readonly<Record<Face, string>> = {
  text: '@expo-google-fonts/literata/400Regular/Literata_400Regular.ttf',
  'text-italic': '@expo-google-fonts/literata/400Regular_Italic/Literata_400Regular_Italic.ttf',
  'text-strong': '@expo-google-fonts/literata/600SemiBold/Literata_600SemiBold.ttf',
  display: '@expo-google-fonts/alegreya-sans/500Medium/AlegreyaSans_500Medium.ttf',
  'display-strong': '@expo-google-fonts/alegreya-sans/700Bold/AlegreyaSans_700Bold.ttf',
};

/** A cache that grew beyond this is emptied: words repeat within a run, but a run may be long. */
const MOST_SHAPED = 20_000;

/** pdfkit scales positions to thousandths in place: only those already in thousandths may be handed out again. */
const THOUSANDTHS = 1000;

/** Letters of Latin, plain and with marks. */
const LATIN = { from: 0x20, to: 0x17f } as const;

/**
 * A glyph keeps for good the letter it was first asked for by, and none where it first came up as a part of another:
 * read aloud or copied, it would then be nothing. So the letters of Latin are asked for by name before anything else.
 */
function nameLetters(font: Font): void {
  for (let letter = LATIN.from; letter <= LATIN.to; letter += 1) font.glyphForCodePoint(letter);
}

/** A hyphen with a glyph of its own, apart from the one an author types; and what a reader of the file takes it for. */
const HYPHEN = 0x2010;
const SOFT_HYPHEN = 0xad;
const drawn = (text: string): string =>
  text.replaceAll(String.fromCodePoint(SOFT_HYPHEN), String.fromCodePoint(HYPHEN));
/** The hyphen that parts a word is no letter of it: readers of the file are to join the word again. */
const named = (glyph: Glyph): Glyph =>
  glyph.codePoints[0] === HYPHEN ? Object.create(glyph, { codePoints: { value: [SOFT_HYPHEN] } }) : glyph;

/** Shapes each text once, for measuring and for drawing. */
function sharing(font: Font, features: readonly string[]): Font {
  nameLetters(font);
  const shaped = new Map<string, GlyphRun>();
  const shared = font.unitsPerEm === THOUSANDTHS;
  const layout = (text: string): Pick<GlyphRun, 'glyphs' | 'positions' | 'advanceWidth'> => {
    let run = shaped.get(text);
    if (!run) {
      run = font.layout(drawn(text), [...features]);
      if (shaped.size >= MOST_SHAPED) shaped.clear();
      shaped.set(text, run);
    }
    return {
      glyphs: run.glyphs.map(named),
      positions: shared ? run.positions : run.positions.map((position) => ({ ...position })),
      advanceWidth: run.advanceWidth,
    };
  };
  return Object.create(font, { layout: { value: layout } });
}

/** A file's address as a path; on Windows the slash before the drive goes. */
const pathOf = (address: string): string =>
  decodeURIComponent(new URL(address).pathname).replace(/^\/(?=[A-Za-z]:)/, '');

let loaded: Promise<Faces> | undefined;

async function openFaces(): Promise<Faces> {
  const { openSync } = await import('fontkit');
  const open = (face: Face): Font => {
    const font = openSync(pathOf(import.meta.resolve(FILES[face])));
    if (!('layout' in font)) throw new Error(`${FILES[face]} is a collection, not a face`);
    return sharing(font, FEATURES[face]);
  };
  return {
    text: open('text'),
    'text-italic': open('text-italic'),
    'text-strong': open('text-strong'),
    display: open('display'),
    'display-strong': open('display-strong'),
    partWord: await loadHyphenation(),
  };
}

export function loadFaces(): Promise<Faces> {
  loaded ??= openFaces();
  return loaded;
}

/** What was found out with the faces, for the booklets that follow. */
interface Known {
  readonly widths: Map<string, number>;
  readonly lines: Readonly<Record<Sheet['type'], KnownLines>>;
}

const knownOf = new WeakMap<Faces, Known>();

export function measureWith(faces: Faces, sheet: Sheet = A5_SHEET): Measure {
  const styles = stylesOf(sheet);
  const known = knownOf.get(faces) ?? { widths: new Map(), lines: { book: new Map(), large: new Map() } };
  knownOf.set(faces, known);
  const { widths } = known;
  return {
    sheet,
    known: known.lines[sheet.type],
    // Who needs large print reads a whole word more easily.
    partsOf: (word, language) =>
      language === undefined || sheet.type === 'large' ? [word] : faces.partWord(word, language),
    width(style: StyleName, text: string): number {
      const { face, size } = styles[style];
      const key = `${face} ${text}`;
      let units = widths.get(key);
      if (units === undefined) {
        const font = faces[face];
        units = font.layout(text).advanceWidth / font.unitsPerEm;
        if (widths.size >= MOST_SHAPED) widths.clear();
        widths.set(key, units);
      }
      return units * size;
    },
    hasGlyph: (style, codePoint) => faces[styles[style].face].hasGlyphForCodePoint(codePoint),
  };
}
