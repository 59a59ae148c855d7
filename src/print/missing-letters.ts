/** Letters a face cannot show. They would come out as empty boxes, so a booklet with any is not drawn at all. */

import type { Measure } from './measure.js';
import type { Page } from './page.js';

export interface MissingLetters {
  /** Each once, in order of code point. */
  readonly characters: readonly string[];
  /** The first text they stand in. */
  readonly where: string;
}

export function missingLetters(pages: readonly Page[], measure: Measure): MissingLetters | undefined {
  const missing = new Set<number>();
  let where: string | undefined;
  for (const page of pages) {
    for (const box of page.boxes) {
      if (box.kind !== 'text') continue;
      for (const letter of box.text) {
        const codePoint = letter.codePointAt(0) ?? 0;
        if (measure.hasGlyph(box.style, codePoint)) continue;
        missing.add(codePoint);
        where ??= box.text;
      }
    }
  }
  if (where === undefined) return undefined;
  const characters = [...missing].sort((a, b) => a - b).map((codePoint) => String.fromCodePoint(codePoint));
  return { characters, where };
}
