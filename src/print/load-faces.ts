/** The five faces, parsed once and shared by every booklet of a run. Nothing is loaded before it is asked for. */
import type { Font } from 'fontkit';
import { loadHyphenation, type PartWord } from './hyphenation.js';
import type { KnownLines } from './known-lines.js';
import type { Measure } from './measure.js';
import { type ShapedFace, shapedFace } from './shape-words.js';
import { A5_SHEET, type Sheet } from './sheet.js';
import { type Face, FEATURES, type StyleName, stylesOf } from './type-styles.js';

/** A face as it is embedded, and as its words are shaped. */
export interface OpenFace extends ShapedFace {
  readonly font: Font;
  readonly unitsPerEm: number;
}

/** The faces, and where words set in them may part. */
export type Faces = Readonly<Record<Face, OpenFace>> & { readonly partWord: PartWord };

/** Literata and Alegreya Sans, SIL Open Font Licence; whole fonts, so that Vietnamese, Greek and Cyrillic are there. */
const FILES: Readonly<Record<Face, string>> = {
  text: '@expo-google-fonts/literata/400Regular/Literata_400Regular.ttf',
  'text-italic': '@expo-google-fonts/literata/400Regular_Italic/Literata_400Regular_Italic.ttf',
  'text-strong': '@expo-google-fonts/literata/600SemiBold/Literata_600SemiBold.ttf',
  display: '@expo-google-fonts/alegreya-sans/500Medium/AlegreyaSans_500Medium.ttf',
  'display-strong': '@expo-google-fonts/alegreya-sans/700Bold/AlegreyaSans_700Bold.ttf',
};

/** Letters of Latin, plain and with marks. */
const LATIN = { from: 0x20, to: 0x17f } as const;

/**
 * A glyph keeps for good the letter it was first asked for by, and none where it first came up as a part of another:
 * read aloud or copied, it would then be nothing. So the letters of Latin are asked for by name before anything else.
 */
function nameLetters(font: Font): void {
  for (let letter = LATIN.from; letter <= LATIN.to; letter += 1) font.glyphForCodePoint(letter);
}

/** A file's address as a path; on Windows the slash before the drive goes. */
const pathOf = (address: string): string =>
  decodeURIComponent(new URL(address).pathname).replace(/^\/(?=[A-Za-z]:)/, '');

let loaded: Promise<Faces> | undefined;

async function openFaces(): Promise<Faces> {
  const { openSync } = await import('fontkit');
  const open = (face: Face): OpenFace => {
    const font = openSync(pathOf(import.meta.resolve(FILES[face])));
    if (!('layout' in font)) throw new Error(`${FILES[face]} is a collection, not a face`);
    nameLetters(font);
    return { font, unitsPerEm: font.unitsPerEm, ...shapedFace(font, FEATURES[face]) };
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

/** Lines that were set with the faces, for the booklets that follow. */
const knownOf = new WeakMap<Faces, Readonly<Record<Sheet['type'], KnownLines>>>();

export function measureWith(faces: Faces, sheet: Sheet = A5_SHEET): Measure {
  const styles = stylesOf(sheet);
  const known = knownOf.get(faces) ?? { book: new Map(), large: new Map() };
  knownOf.set(faces, known);
  return {
    sheet,
    known: known[sheet.type],
    // Who needs large print reads a whole word more easily.
    partsOf: (word, language) =>
      language === undefined || sheet.type === 'large' ? [word] : faces.partWord(word, language),
    width(style: StyleName, text: string): number {
      const { face, size } = styles[style];
      const { unitsPerEm, advanceOf } = faces[face];
      return (advanceOf(text) / unitsPerEm) * size;
    },
    hasGlyph: (style, codePoint) => faces[styles[style].face].hasGlyph(codePoint),
  };
}
