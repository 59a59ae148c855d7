/** Letters a face cannot show. They would come out as empty boxes, so a booklet with any is not drawn at all. */

import type { Measure } from './measure.js';
import type { Page } from './page.js';

export interface MissingLetters {
  /** Each once, in order of code point. */
  readonly characters: readonly string[];
  /** The text they stand in. */
  readonly where: string;
}

/** Every text that cannot be shown whole, once, in the order of the pages. */
export function missingLetters(pages: readonly Page[], measure: Measure): readonly MissingLetters[] {
  const texts = new Map<string, Set<number>>();
  for (const page of pages) {
    for (const box of page.boxes) {
      if (box.kind !== 'text') continue;
      for (const letter of box.text) {
        const codePoint = letter.codePointAt(0) ?? 0;
        if (measure.hasGlyph(box.style, codePoint)) continue;
        texts.set(box.text, (texts.get(box.text) ?? new Set()).add(codePoint));
      }
    }
  }
  return [...texts].map(([where, missing]) => ({
    characters: [...missing].sort((a, b) => a - b).map((codePoint) => String.fromCodePoint(codePoint)),
    where,
  }));
}
