/**
 * The public library: an index, a page for each exercise, an outline for each public programme, and the rulebook.
 * It is made from exercises, programmes and rules alone and has no way to meet a client.
 */
import type { VNode } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { LibraryExercise } from '../../../layouts/library/exercise-page.js';
import { LibraryIndex } from '../../../layouts/library/index-page.js';
import { LibraryProgramme } from '../../../layouts/library/programme-page.js';
import { RulebookPage } from '../../../layouts/library/rulebook-page.js';
import type { RulebookRoom } from '../../model/rulebook.js';
import type { Library } from '../../model/studio.js';
import { sayLibraryWords } from '../../words/library-words.js';
import { sayRulebookWords } from '../../words/rulebook-words.js';
import { speechOf } from '../../words/speech.js';
import { payloadPolicy } from '../policy.js';
import type { WebSources } from '../prepare-shell.js';
import { renderPage } from '../render-page.js';
import type { FontFile } from '../shell-parts.js';
import { STUDIO_STYLE, writeStudioAssets } from '../studio-assets.js';
import { type Page, writePages } from '../write-pages.js';

export interface LibraryContent {
  readonly library: Library;
  /** Every rule of the planner, room by room. */
  readonly rulebook: readonly RulebookRoom[];
}

export interface LibraryRun extends LibraryContent {
  /** An empty folder. */
  readonly out: string;
  readonly fonts: readonly FontFile[];
  readonly sources: WebSources;
}

/** Where the rulebook stands, from the library's root; a rule is found in it by its id. */
export const RULEBOOK = 'rulebook/index.html';

export function libraryPages({ library, rulebook }: LibraryContent): readonly Page[] {
  const { language } = library.studio;
  const props = { library, words: sayLibraryWords(language), speech: speechOf(language) };
  const book = sayRulebookWords(language);
  const page = (path: string, title: string, view: () => VNode): Page => ({
    path,
    render: () =>
      renderPage({
        title,
        language,
        direction: props.speech.direction,
        policy: payloadPolicy(),
        listed: true,
        styles: [],
        styleFiles: [`${'../'.repeat(path.split('/').length - 1)}${STUDIO_STYLE}`],
        scripts: [],
        body: renderToString(view()),
      }),
  });
  return [
    page('index.html', props.words.title(library.studio.name), () => <LibraryIndex {...props} />),
    ...library.exercises.map((of) =>
      page(`exercises/${of.id}.html`, of.name, () => <LibraryExercise {...props} of={of} />),
    ),
    ...library.programmes
      .filter((programme) => programme.public)
      .map((of) => page(`programmes/${of.id}.html`, of.name, () => <LibraryProgramme {...props} of={of} />)),
    page(RULEBOOK, book.title, () => <RulebookPage {...props} rulebook={rulebook} book={book} />),
  ];
}

export async function renderLibrary({ out, fonts, sources, ...content }: LibraryRun): Promise<void> {
  await writePages({ input: sources.layouts, out, pages: libraryPages(content) });
  await writeStudioAssets(out, fonts, sources);
}
