/**
 * What a crawler is told of each page, in the vocabulary of schema.org (held by its typings). An exercise is told as
 * instructions, `HowTo`: what the vocabulary has for exercise as such, `ExercisePlan`, is a medical entity with loads and
 * an audience, and nothing here is a claim about anybody's health. No page says for whom it is good, or against what.
 */
import type { CollectionPage, CreativeWork, HowTo, HowToStep, WebPage, WebSite, WithContext } from 'schema-dts';
import type { Exercise } from '../../model/exercise.js';
import { type Line, plainText } from '../../model/prose.js';
import type { PublicProgramme } from '../../model/public-library.js';
import type { Studio } from '../../model/studio.js';
import type { LibraryWords } from '../../words/library-words.js';

export type PageData = WithContext<CollectionPage | CreativeWork | HowTo | WebPage>;

export interface PageFacts {
  readonly studio: Studio;
  readonly words: LibraryWords;
  readonly title: string;
  readonly description: string;
  /** The page's whole address, and that of the first page; absent where nobody knows them. */
  readonly address: string | undefined;
  readonly home: string | undefined;
  /** Of the social picture. */
  readonly picture: string | undefined;
}

const siteOf = ({ studio, words, home }: PageFacts): WebSite => ({
  '@type': 'WebSite',
  name: words.title(studio.name),
  ...(home === undefined ? {} : { url: home }),
  publisher: { '@type': 'Organization', name: studio.name, address: studio.place },
});

const commonOf = (facts: PageFacts) => ({
  name: facts.title,
  ...(facts.description === '' ? {} : { description: facts.description }),
  inLanguage: facts.studio.language,
  isPartOf: siteOf(facts),
  ...(facts.address === undefined ? {} : { url: facts.address }),
  ...(facts.picture === undefined ? {} : { image: facts.picture }),
});

const told = (lines: readonly Line[]): string => lines.map(plainText).join(' ');

export function exerciseData({ words: own }: Exercise, kit: readonly string[], facts: PageFacts): WithContext<HowTo> {
  const { words } = facts;
  const step = (name: string, text: string): readonly HowToStep[] =>
    text === '' ? [] : [{ '@type': 'HowToStep', ...(name === '' ? {} : { name }), text }];
  const steps = [
    ...step(words.setUp, told(own.setUp)),
    ...step(words.pickUp, told(own.pickUp)),
    ...own.cues.flatMap(({ phase, line }) => step(phase, plainText(line))),
    ...step(words.putDown, told(own.putDown)),
  ];
  return {
    '@context': 'https://schema.org',
    '@type': 'HowTo',
    ...commonOf(facts),
    ...(kit.length === 0 ? {} : { tool: kit.map((name) => ({ '@type': 'HowToTool', name }) as const) }),
    ...(steps.length === 0 ? {} : { step: steps }),
  };
}

export const programmeData = (of: PublicProgramme, facts: PageFacts): WithContext<CreativeWork> => ({
  '@context': 'https://schema.org',
  '@type': 'CreativeWork',
  ...commonOf(facts),
  ...(of.sessions.length === 0
    ? {}
    : {
        hasPart: of.sessions.map(
          ({ id, name }) => ({ '@type': 'CreativeWork', name: name || id.toUpperCase() }) as const,
        ),
      }),
});

export const listData = (exercises: number, facts: PageFacts): WithContext<CollectionPage> => ({
  '@context': 'https://schema.org',
  '@type': 'CollectionPage',
  ...commonOf(facts),
  mainEntity: { '@type': 'ItemList', numberOfItems: exercises },
});

export const pageData = (facts: PageFacts): WithContext<WebPage> => ({
  '@context': 'https://schema.org',
  '@type': 'WebPage',
  ...commonOf(facts),
});

/** As text that nothing in it can end the element of. */
export const writeData = (data: PageData): string => JSON.stringify(data).replaceAll('<', '\\u003c');
