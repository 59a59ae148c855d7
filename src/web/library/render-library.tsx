/**
 * The public library: its lists, a page for each exercise, an outline for each public programme, the rulebook, and what
 * programs read along. It is made from exercises, programmes and rules alone and has no way to meet a client.
 */
import type { VNode } from 'preact';
import { renderToString } from 'preact-render-to-string';
import type { PageTold, PictureTold } from '../../../layouts/document.js';
import { LibraryExercise } from '../../../layouts/library/exercise-page.js';
import { LibraryIndex } from '../../../layouts/library/index-page.js';
import { capital, toolsOf } from '../../../layouts/library/kit-text.js';
import { LibraryList } from '../../../layouts/library/list-page.js';
import { LISTS, listTitle } from '../../../layouts/library/lists.js';
import { neighboursIn } from '../../../layouts/library/neighbours.js';
import { LibraryProgramme } from '../../../layouts/library/programme-page.js';
import { RulebookPage } from '../../../layouts/library/rulebook-page.js';
import { PREVIEW } from '../../../layouts/preview.js';
import type { ExerciseId } from '../../model/identity.js';
import type { Drawings, Photograph, Photographs } from '../../model/picture.js';
import { plainText } from '../../model/prose.js';
import type { PublicLibrary } from '../../model/public-library.js';
import type { RulebookRoom } from '../../model/rulebook.js';
import { sayLibraryWords } from '../../words/library-words.js';
import { sayRulebookWords } from '../../words/rulebook-words.js';
import { sayDrawn } from '../../words/say-drawing.js';
import { saySearchWords } from '../../words/search-words.js';
import { speechOf } from '../../words/speech.js';
import { besidePage, drawingsBesides, filesBeside, PICTURES } from '../place-photographs.js';
import { libraryPolicy, searchPolicy } from '../policy.js';
import type { WebSources } from '../prepare-shell.js';
import { renderPage } from '../render-page.js';
import { type FontFile, hashSource } from '../shell-parts.js';
import { STUDIO_STYLE, writeStudioAssets } from '../studio-assets.js';
import { type Page, writePages } from '../write-pages.js';
import { addressesAt } from './addresses.js';
import { FEED, SCRIPT, SENTENCE_STYLE, writeLibraryAssets } from './library-assets.js';
import { renderNotHere } from './render-not-here.js';
import {
  exerciseData,
  listData,
  type PageData,
  type PageFacts,
  pageData,
  programmeData,
  writeData,
} from './structured-data.js';

export interface LibraryContent {
  readonly library: PublicLibrary;
  /** Every rule of the planner, room by room. */
  readonly rulebook: readonly RulebookRoom[];
  /** Of those exercises that have one. */
  readonly drawings?: Drawings;
  /** Of those exercises that have one of the coach's own; their files are written beside the pages. */
  readonly photographs?: Photographs;
  /** Files below the library's root that stand for a drawn exercise where it is spoken of elsewhere; written by whoever has them. */
  readonly previews?: ReadonlyMap<ExerciseId, { readonly path: string }>;
  /** ISO dates on which exercises came to say what they say; without them there is no feed. */
  readonly changed?: ReadonlyMap<ExerciseId, string>;
}

export interface LibraryRun extends LibraryContent {
  /** An empty folder. */
  readonly out: string;
  readonly fonts: readonly FontFile[];
  readonly sources: WebSources;
}

/** Where the rulebook stands, from the library's root; a rule is found in it by its id. */
export const RULEBOOK = 'rulebook/index.html';

/** `path` is below the library's root. */
type DraftPicture = Omit<PictureTold, 'address'> & { readonly path: string };

interface Draft {
  readonly path: string;
  readonly title: string;
  readonly description: string;
  readonly kind: PageTold['kind'];
  readonly picture?: DraftPicture | undefined;
  readonly data: (facts: PageFacts) => PageData;
  readonly view: () => VNode;
}

function widestOf({ said, copies }: Photograph): DraftPicture | undefined {
  const widest = copies.at(-1);
  if (widest === undefined) return undefined;
  const { name, width, height } = widest;
  return { path: `${PICTURES}${name}`, width, height, alternative: said };
}

function draftsOf(content: LibraryContent): readonly Draft[] {
  const { library, rulebook, previews = new Map(), photographs: taken = new Map() } = content;
  const { studio, exercises, programmes } = library;
  const words = sayLibraryWords(studio.language);
  const speech = speechOf(studio.language);
  const photographs = besidePage(taken, '../');
  const drawings = drawingsBesides(content.drawings ?? new Map(), photographs);
  const props = { library, neighbours: neighboursIn(exercises), words, speech, drawings, photographs };
  const book = sayRulebookWords(studio.language);
  const rules = new Set<string>(rulebook.flatMap(({ entries }) => entries.map(({ rule }) => rule.id)));
  const summary = words.summary(studio.name, studio.place, exercises.length);
  const lists = (['kit', 'asks', 'version'] as const).map(
    (name): Draft => ({
      path: LISTS[name],
      title: `${listTitle(name, words)}: ${studio.name}`,
      description: summary,
      kind: 'website',
      data: (facts) => listData(exercises.length, facts),
      view: () => <LibraryList {...props} name={name} />,
    }),
  );
  return [
    {
      path: LISTS.movement,
      title: words.title(studio.name),
      description: summary,
      kind: 'website',
      data: (facts) => listData(exercises.length, facts),
      view: () => <LibraryIndex {...props} search={saySearchWords(studio.language)} />,
    },
    ...lists,
    ...exercises.map((of): Draft => {
      const photograph = taken.get(of.id);
      const [preview, drawn] = [previews.get(of.id), drawings.get(of.id)];
      const painted =
        preview === undefined || drawn === undefined
          ? undefined
          : { path: preview.path, ...PREVIEW, alternative: sayDrawn(drawn, speech.words.drawing) };
      return {
        path: `exercises/${of.id}.html`,
        title: of.name,
        description: of.words.description.map(plainText).join(' '),
        kind: 'article',
        picture: photograph === undefined ? painted : widestOf(photograph),
        data: (facts) => exerciseData(of, toolsOf(of, props).map(capital), facts),
        view: () => <LibraryExercise {...props} of={of} rules={rules} />,
      };
    }),
    ...programmes.map(
      (of): Draft => ({
        path: `programmes/${of.id}.html`,
        title: of.name,
        description: of.description.map(plainText).join(' '),
        kind: 'article',
        data: (facts) => programmeData(of, facts),
        view: () => <LibraryProgramme {...props} of={of} />,
      }),
    ),
    {
      path: RULEBOOK,
      title: book.title,
      description: book.intro[0] ?? '',
      kind: 'article',
      data: pageData,
      view: () => <RulebookPage {...props} rulebook={rulebook} book={book} />,
    },
  ];
}

const toldOf = ({ width, height, alternative }: DraftPicture, address: string): PictureTold => ({
  address,
  width,
  height,
  alternative,
});

/** Every page that is listed, in the order of the drafts; the page that stands for one that is not here comes last. */
export async function libraryPages(content: LibraryContent): Promise<readonly Page[]> {
  const { studio } = content.library;
  const words = sayLibraryWords(studio.language);
  const { direction } = speechOf(studio.language);
  const addressOf = studio.address === undefined ? undefined : addressesAt(studio.address);
  const home = addressOf?.('');
  const feed = content.changed === undefined ? undefined : addressOf?.(FEED);
  const pages = await Promise.all(
    draftsOf(content).map(async ({ path, title, description, kind, picture, data, view }): Promise<Page> => {
      const canonical = addressOf?.(path);
      const shown = picture === undefined ? undefined : addressOf?.(picture.path);
      const text = writeData(data({ studio, words, title, description, address: canonical, home, picture: shown }));
      const hashed = { text, source: await hashSource(text) };
      const root = '../'.repeat(path.split('/').length - 1);
      const first = path === LISTS.movement;
      const told: PageTold = {
        description,
        kind,
        site: studio.name,
        data: text,
        ...(canonical === undefined ? {} : { canonical }),
        ...(feed === undefined ? {} : { feed: { address: feed, title: words.changedExercises } }),
        ...(shown === undefined || picture === undefined ? {} : { picture: toldOf(picture, shown) }),
      };
      return {
        path,
        render: () =>
          renderPage({
            title,
            language: studio.language,
            direction,
            policy: first ? searchPolicy(hashed) : libraryPolicy(hashed),
            listed: true,
            styles: [],
            styleFiles: [`${root}${STUDIO_STYLE}`, ...(first ? [SENTENCE_STYLE] : [])],
            scripts: [],
            scriptFiles: first ? [SCRIPT] : [],
            told,
            body: renderToString(view()),
          }),
      };
    }),
  );
  return pages;
}

export async function renderLibrary({ out, fonts, sources, ...content }: LibraryRun): Promise<void> {
  const pages = await libraryPages(content);
  const notHere = await renderNotHere(content.library.studio, fonts, sources);
  await writePages({ input: sources.layouts, out, pages: [...pages, notHere] });
  // A stranger's first page holds still: a face that comes late is there for the next one.
  await writeStudioAssets(out, fonts, sources, 'optional');
  const beside = filesBeside(content.photographs ?? new Map());
  await Promise.all(beside.map(({ path, bytes }) => sources.write(`${out}/${path}`, bytes)));
  const files = { pages: pages.map(({ path }) => path), pictures: beside.map(({ path }) => path) };
  await writeLibraryAssets({ ...content, ...files, out, fonts, sources });
}
