/** The text of a laid-out booklet put together again, tag by tag, as a reader of the tags would hear it. */
import { drawable } from '../../src/print/lay-out-lines.js';
import type { Page, Tag, TagRole } from '../../src/print/page.js';

export interface TaggedText {
  readonly tag: Tag;
  readonly role: TagRole;
  readonly text: string;
  readonly page: number;
}

/** Spaces of any kind are one space: where a line ends is the layout's affair. */
export const plain = (text: string): string => drawable(text).replace(/\s+/g, ' ').trim();

/** Each tag that holds words, in order of first appearance. */
export function taggedTexts(pages: readonly Page[]): readonly TaggedText[] {
  const texts = new Map<Tag, { text: string; page: number }>();
  for (const page of pages) {
    for (const box of page.boxes) {
      if (box.kind !== 'text' || !box.tag) continue;
      const held = texts.get(box.tag) ?? { text: '', page: page.number };
      held.text += box.endsAtSpace ? `${box.text} ` : box.text;
      texts.set(box.tag, held);
    }
  }
  return [...texts].map(([tag, { text, page }]) => ({ tag, role: tag.role, text: plain(text), page }));
}

export const textsOn = (pages: readonly Page[], from: number, to: number): readonly TaggedText[] =>
  taggedTexts(pages.filter((page) => page.number >= from && page.number <= to));
