/**
 * What is known of exercises to somebody who looks for one: names and descriptions, one index of their own, and the
 * headings they share with others (a movement, a thing needed, a muscle, a demand), each with everyday words for it.
 * Headings are told once for all that stand under them, so that the index stays small.
 */
import type { Options } from 'minisearch';
import { foldTerm, termsOf } from './terms.js';

const HEADING_KINDS = ['movement', 'kit', 'works', 'asks'] as const;
export type HeadingKind = (typeof HEADING_KINDS)[number];

export interface Heading {
  readonly kind: HeadingKind;
  /** The trade's own name, as pages have it. */
  readonly name: string;
  /** Everyday words for it; empty for none. */
  readonly everyday: string;
}

export interface Entry {
  /** The exercise's own. */
  readonly id: string;
  readonly name: string;
  readonly text: string;
  /** Places in the table of headings, without repeats. */
  readonly under: readonly number[];
}

/** All that is looked through. */
export interface Searchable {
  /** Words that are passed over where others are typed with them. */
  readonly fillers: string;
  /** Endings without which a word is looked for as well. */
  readonly endings: readonly string[];
  readonly headings: readonly Heading[];
  readonly entries: readonly Entry[];
}

/** As it is stored. */
export interface StoredIndex extends Omit<Searchable, 'entries'> {
  /** Names and descriptions, as the library that looks through them writes them down. */
  readonly index: string;
  /** By exercise: the headings it stands under. */
  readonly under: Readonly<Record<string, readonly number[]>>;
}

/** Where a word of an exercise's own was found. */
const OWN_FIELDS = ['name', 'text'] as const;

/** The same for writing an index and for reading it: otherwise nothing would be found. */
export const OWN: Options<Entry> = {
  fields: [...OWN_FIELDS],
  storeFields: ['name'],
  tokenize: (text) => [...termsOf(text)],
  processTerm: foldTerm,
};
