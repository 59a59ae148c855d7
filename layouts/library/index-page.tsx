/** The library's first page: the search, the sentence that filters, every exercise by its movement, the programmes. */
import { PATTERNS } from '../../src/model/exercise.js';
import type { SearchWords } from '../../src/words/search-words.js';
import { Paragraphs } from '../lines.js';
import { StudioPage } from '../studio-page.js';
import { Entries, type Entry } from './entries.js';
import { choicesIn } from './fit.js';
import type { LibraryProps } from './library-props.js';
import { Lists } from './lists.js';
import { Search } from './search.js';
import { Sentence } from './sentence.js';

export function LibraryIndex({ library, words, speech, search }: LibraryProps & { readonly search: SearchWords }) {
  const { exercises, programmes, studio } = library;
  const movements = PATTERNS.flatMap((pattern): readonly Entry[] => {
    const own = exercises.filter(({ facts }) => facts.pattern === pattern);
    return own.length === 0 ? [] : [{ head: words.patterns[pattern], exercises: own }];
  });
  return (
    <StudioPage
      title={words.title(studio.name)}
      foot={
        <>
          <p>
            <a href="rulebook/index.html">{words.rulebook}</a>
          </p>
          <p>
            {studio.name}, {studio.place}. {words.notMedical}
          </p>
        </>
      }
    >
      <Paragraphs lines={studio.description ?? []} />
      <Lists here="movement" programmes={programmes.length > 0} words={words} />
      <Search words={search} />
      <Sentence choices={choicesIn(exercises)} words={words} speech={speech} />
      <p class="ask-first">{words.doesNotKnowYou}</p>
      <section aria-labelledby="by-movement">
        <h2 id="by-movement">{words.byMovement}</h2>
        <Entries entries={movements} level={3} filtered />
      </section>
      {programmes.length === 0 ? null : (
        <section aria-labelledby="programmes">
          <h2 id="programmes">{words.programmes}</h2>
          {programmes.map((programme) => (
            <section class="entry">
              <h3>
                <a href={`programmes/${programme.id}.html`}>{programme.name}</a>
              </h3>
              <Paragraphs lines={programme.description} />
            </section>
          ))}
        </section>
      )}
    </StudioPage>
  );
}
