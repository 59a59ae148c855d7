/** What stands beside the library's pages: the search's script and index, the sentence's style, and what programs read. */
import { LISTS } from '../../../layouts/library/lists.js';
import type { ExerciseId } from '../../model/identity.js';
import { plainText } from '../../model/prose.js';
import type { PublicLibrary } from '../../model/public-library.js';
import { writeIndex } from '../../search/write-index.js';
import { everydayWordsOf } from '../../words/everyday-words.js';
import { sayLibraryWords } from '../../words/library-words.js';
import { speechOf } from '../../words/speech.js';
import { bundleScript, type WebSources } from '../prepare-shell.js';
import type { FontFile } from '../shell-parts.js';
import { STUDIO_STYLE } from '../studio-assets.js';
import { addressesAt } from './addresses.js';
import { searchableOf } from './searchable.js';
import { sentenceRules } from './sentence-rules.js';
import { writeFeed, writeSitemap } from './syndicate.js';

export const SCRIPT = 'search.js';
export const SENTENCE_STYLE = 'sentence.css';
export const FEED = 'feed.xml';
const INDEX = 'search-index.js';
const WORKER = 'worker.js';
const SITEMAP = 'sitemap.xml';

export interface LibraryAssets {
  readonly library: PublicLibrary;
  readonly changed?: ReadonlyMap<ExerciseId, string>;
  readonly out: string;
  /** Every listed page, below the library's root. */
  readonly pages: readonly string[];
  /** Every picture, likewise. */
  readonly pictures: readonly string[];
  readonly fonts: readonly FontFile[];
  readonly sources: WebSources;
}

/** The index as a script, the one kind of file that a page opened from a disk may read. */
export function searchIndexOf({ exercises, studio }: Pick<PublicLibrary, 'exercises' | 'studio'>): string {
  const within = {
    words: sayLibraryWords(studio.language),
    speech: speechOf(studio.language),
    everyday: everydayWordsOf(studio.language),
  };
  return `exerciseIndex(${JSON.stringify(writeIndex(searchableOf(exercises, within)))})\n`;
}

/** What the first page needs, put away before it is asked for; faces of other letters come when they are wanted. */
const firstOf = (fonts: readonly FontFile[]): readonly string[] => [
  ...Object.values(LISTS),
  ...[STUDIO_STYLE, SENTENCE_STYLE, SCRIPT, INDEX],
  ...fonts.filter(({ letters }) => letters === 'latin').map(({ name }) => `fonts/${name}`),
];

export async function writeLibraryAssets({
  library,
  changed,
  out,
  pages,
  pictures,
  fonts,
  sources,
}: LibraryAssets): Promise<void> {
  const write = (name: string, text: string): Promise<void> =>
    sources.write(`${out}/${name}`, new TextEncoder().encode(text));
  const [script, worker] = await Promise.all([
    bundleScript('main', sources.search),
    bundleScript('worker', sources.search),
  ]);
  const first = firstOf(fonts);
  const faces = fonts.map(({ name }) => `fonts/${name}`);
  const others = [...pages, ...pictures, ...faces].filter((name) => !first.includes(name));
  const held = `const FIRST=${JSON.stringify(first)},PAGES=${JSON.stringify(others)};`;
  await Promise.all([
    write(SCRIPT, `${script}\n`),
    write(INDEX, searchIndexOf(library)),
    write(WORKER, `${held}${worker}\n`),
    write(SENTENCE_STYLE, `${sentenceRules(library.exercises)}\n`),
    ...syndicated({ library, changed, pages }).map(({ name, text }) => write(name, text)),
  ]);
}

interface Written {
  readonly name: string;
  readonly text: string;
}

/** Only whole addresses mean anything to a program that reads from elsewhere: none are written while nobody knows them. */
function syndicated({
  library: { studio, exercises },
  changed,
  pages,
}: {
  readonly library: PublicLibrary;
  readonly changed: ReadonlyMap<ExerciseId, string> | undefined;
  readonly pages: readonly string[];
}): readonly Written[] {
  if (studio.address === undefined) return [];
  const addressOf = addressesAt(studio.address);
  const words = sayLibraryWords(studio.language);
  const dayOf = new Map(exercises.map(({ id }) => [`exercises/${id}.html`, changed?.get(id)]));
  const map = writeSitemap(pages.map((path) => ({ address: addressOf(path), changed: dayOf.get(path) })));
  if (changed === undefined) return [{ name: SITEMAP, text: map }];
  const feed = writeFeed({
    address: addressOf(FEED),
    home: addressOf(''),
    title: words.title(studio.name),
    subtitle: words.changedExercises,
    author: studio.name,
    language: studio.language,
    entries: exercises.flatMap(({ id, name, words: own }) => {
      const day = changed.get(id);
      const summary = own.description.map(plainText).join(' ');
      return day === undefined
        ? []
        : [{ address: addressOf(`exercises/${id}.html`), title: name, summary, changed: day }];
    }),
  });
  return [
    { name: SITEMAP, text: map },
    { name: FEED, text: feed },
  ];
}
