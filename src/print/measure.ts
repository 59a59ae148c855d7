/** What the layout needs to know of the faces and of the sheet, and all it needs to know. */
import type { KnownLines } from './known-lines.js';
import type { Sheet } from './sheet.js';
import type { StyleName } from './type-styles.js';

export interface Measure {
  readonly sheet: Sheet;
  /** In layout points. */
  readonly width: (style: StyleName, text: string) => number;
  readonly hasGlyph: (style: StyleName, codePoint: number) => boolean;
  /** A word into the parts a line's end may part it between; whole where no language is named. BCP 47. */
  readonly partsOf: (word: string, language?: string) => readonly string[];
  /** Of words that name none themselves. BCP 47. */
  readonly language?: string;
  /** Kept from what was set before; absent where nothing is kept. */
  readonly known?: KnownLines;
}
