/**
 * The few sentences of the web pages that no booklet carries: they belong to the drawing, not to a client.
 * One record for each language; a language without one reads English.
 */
export interface PageWords {
  readonly shellTitle: string;
  readonly shellOpen: string;
  readonly shellLoading: string;
  readonly readingCopy: string;
  readonly easierToday: string;
  readonly somethingHurts: string;
  readonly toContents: string;
  /** Said in place of a tally of so many feet. */
  readonly tallyToDo: (label: string, strokes: number) => string;
  readonly alsoToday: string;
}

const english: PageWords = {
  shellTitle: 'Your booklet',
  shellOpen: 'Open your booklet',
  shellLoading: 'Your booklet is one step away.',
  readingCopy: 'This copy is for reading and cannot keep your marks. Use a pencil on paper.',
  easierToday: 'Easier today',
  somethingHurts: 'Something hurts',
  toContents: 'Contents',
  tallyToDo: (label, strokes) =>
    `${label === '' ? '' : `${label}: `}${strokes} ${strokes === 1 ? 'set' : 'sets'} to do`,
  alsoToday: 'In this session',
};

const languages: Readonly<Record<string, PageWords>> = { en: english };

/** `language` is a BCP 47 tag; only its first subtag counts here. */
export const sayPageWords = (language: string): PageWords => languages[language.split('-')[0] ?? ''] ?? english;
