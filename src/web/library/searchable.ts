/** Exercises as somebody may look for them: their own words, and the headings they stand under with everyday words. */
import type { Exercise } from '../../model/exercise.js';
import { plainText } from '../../model/prose.js';
import type { Heading, Searchable } from '../../search/entry.js';
import type { EverydayWords } from '../../words/everyday-words.js';
import type { LibraryWords } from '../../words/library-words.js';
import type { Speech } from '../../words/speech.js';

export interface SearchableIn {
  readonly words: LibraryWords;
  readonly speech: Speech;
  readonly everyday: EverydayWords;
}

function headingsOf({ facts }: Exercise, { words, speech, everyday }: SearchableIn): readonly Heading[] {
  const kinds = [...facts.kit.load.map(({ kind }) => kind), ...facts.kit.things];
  const nothing = facts.kit.load.length === 0 || facts.kit.unloaded;
  return [
    { kind: 'movement', name: words.patterns[facts.pattern], everyday: everyday.patterns[facts.pattern] },
    ...kinds.map(
      (kind): Heading => ({ kind: 'kit', name: speech.words.loads.kind[kind], everyday: everyday.kit[kind] ?? '' }),
    ),
    ...(nothing ? [{ kind: 'kit', name: words.nothingNeeded, everyday: everyday.nothingNeeded } as const] : []),
    ...[...facts.muscles.main, ...facts.muscles.assisting].map(
      (muscle): Heading => ({
        kind: 'works',
        name: muscle,
        everyday: everyday.muscles.get(muscle.toLowerCase()) ?? '',
      }),
    ),
    ...facts.asks.map(({ of }): Heading => ({ kind: 'asks', name: of, everyday: everyday.asks[of] })),
  ];
}

export function searchableOf(exercises: readonly Exercise[], within: SearchableIn): Searchable {
  const places = new Map<string, number>();
  const headings: Heading[] = [];
  const placeOf = (heading: Heading): number => {
    const key = `${heading.kind} ${heading.name}`;
    const known = places.get(key);
    if (known !== undefined) return known;
    places.set(key, headings.length);
    return headings.push(heading) - 1;
  };
  const entries = exercises.map((of) => ({
    id: of.id,
    name: of.name,
    text: of.words.description.map(plainText).join(' '),
    under: [...new Set(headingsOf(of, within).map(placeOf))],
  }));
  const { fillers, endings } = within.everyday;
  return { fillers, endings, headings, entries };
}
