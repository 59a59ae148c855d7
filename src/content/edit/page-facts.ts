/** What a page says, without where: two of these are equal where a reader would be told the same. */
import type { Line } from '../../model/prose.js';
import { plainText } from '../../model/prose.js';
import type { OpenFile } from '../open-file.js';
import { sameName } from '../sections.js';
import { plainOf } from '../yaml-tree.js';

export type PlainBlock =
  | { readonly kind: 'words'; readonly line: Line }
  | { readonly kind: 'list'; readonly items: readonly Line[] }
  | { readonly kind: 'table'; readonly heads: readonly string[]; readonly rows: readonly (readonly string[])[] };

export interface PlainPart {
  readonly heading: string;
  readonly blocks: readonly PlainBlock[];
}

export interface PageFacts {
  readonly front: Readonly<Record<string, unknown>>;
  readonly intro: readonly PlainBlock[];
  readonly parts: readonly PlainPart[];
  /** Kinds of Markdown that is not printed, in their order. */
  readonly unprinted: readonly string[];
}

/** `undefined` where the front matter cannot be read. */
export function factsOf({ keys, body }: OpenFile): PageFacts | undefined {
  if (!keys) return undefined;
  const plain = plainOf(keys);
  // A list with nothing in it says what no list says.
  const written = typeof plain === 'object' && plain !== null ? Object.entries(plain) : [];
  const front = Object.fromEntries(written.filter(([, value]) => !(Array.isArray(value) && value.length === 0)));
  const intro: PlainBlock[] = [];
  const parts: { heading: string; blocks: PlainBlock[] }[] = [];
  for (const block of body.blocks) {
    const into = parts.at(-1)?.blocks ?? intro;
    if (block.kind === 'heading') parts.push({ heading: plainText(block.words.line), blocks: [] });
    else if (block.kind === 'paragraph') into.push({ kind: 'words', line: block.words.line });
    else if (block.kind === 'list') into.push({ kind: 'list', items: block.items.map(({ line }) => line) });
    else if (block.kind === 'table') {
      const heads = block.head.map(({ line }) => plainText(line));
      into.push({ kind: 'table', heads, rows: block.rows.map(({ cells }) => cells.map(({ raw }) => raw)) });
    }
  }
  return { front, intro, parts, unprinted: body.unprinted.map(({ what }) => what) };
}

export const partAt = (facts: PageFacts, name: string): number =>
  facts.parts.findIndex(({ heading }) => sameName(heading) === sameName(name));
