/** The body of a file as a tree of blocks, each with its place. */
import type { Place } from '../model/place.js';
import type { Line } from '../model/prose.js';

/** A run of words with its links, as they stand in the file. */
export interface Sentence {
  readonly line: Line;
  readonly links: readonly SentenceLink[];
  readonly place: Place;
}

export interface SentenceLink {
  /** As written. */
  readonly target: string;
  readonly text: string;
  readonly place: Place;
}

/** Something Markdown has and a booklet does not print. */
export interface Unprinted {
  readonly what: 'picture' | 'quotation' | 'code' | 'line' | 'tag';
  readonly place: Place;
}

/** A picture that stands alone, as written; it is printed only where `content` has a use for it. */
export interface PictureBlock {
  readonly kind: 'picture';
  readonly target: string;
  /** What stands in the brackets. */
  readonly said: string;
  readonly place: Place;
}

export interface Cell extends Sentence {
  /** The cell's text, as written, trimmed; `place` is where it stands. */
  readonly raw: string;
}

export interface TableRow {
  readonly cells: readonly Cell[];
  readonly place: Place;
}

export type Block =
  | { readonly kind: 'heading'; readonly level: number; readonly words: Sentence; readonly place: Place }
  | { readonly kind: 'paragraph'; readonly words: Sentence; readonly place: Place }
  | PictureBlock
  | { readonly kind: 'list'; readonly items: readonly Sentence[]; readonly place: Place }
  | {
      readonly kind: 'table';
      readonly head: readonly Cell[];
      readonly rows: readonly TableRow[];
      readonly place: Place;
    };

export interface Body {
  readonly blocks: readonly Block[];
  readonly unprinted: readonly Unprinted[];
}
