/** Writes the index of a library's exercises, once for a build. */
import MiniSearch from 'minisearch';
import { type Entry, OWN, type Searchable, type StoredIndex } from './entry.js';
import { termsOf } from './terms.js';

/** A word of more descriptions than one in this many tells none of them from the others. */
const TELLS_LITTLE = 12;
/** In a small library every word does. */
const FEW = 8;

/** The texts without what nearly all of them say, in any language: half of an index would be *a*, *the* and *with*. */
function telling(entries: readonly Entry[]): readonly Entry[] {
  const count = new Map<string, number>();
  const terms = entries.map(({ text }) => [...new Set(termsOf(text))]);
  for (const term of terms.flat()) count.set(term, (count.get(term) ?? 0) + 1);
  const most = Math.max(FEW, entries.length / TELLS_LITTLE);
  return entries.map((entry, at) => ({
    ...entry,
    text: (terms[at] ?? []).filter((term) => (count.get(term) ?? 0) <= most).join(' '),
  }));
}

/** Entries in a fixed order give the same text. */
export function writeIndex({ entries, ...table }: Searchable): string {
  const own = new MiniSearch<Entry>(OWN);
  own.addAll(telling(entries));
  const stored: StoredIndex = {
    ...table,
    index: JSON.stringify(own),
    under: Object.fromEntries(entries.map(({ id, under }) => [id, under])),
  };
  return JSON.stringify(stored);
}
