/** The way from one list of the library to the others. */
import type { LibraryWords } from '../../src/words/library-words.js';

/** Files at the library's root, in the order of the design. */
export const LISTS = {
  movement: 'index.html',
  kit: 'by-kit.html',
  asks: 'by-what-it-asks.html',
  version: 'easier-and-harder.html',
} as const;
export type ListName = keyof typeof LISTS;

export const listTitle = (name: ListName, words: LibraryWords): string =>
  ({ movement: words.byMovement, kit: words.byKit, asks: words.byAsk, version: words.byVersion })[name];

const NAMES = ['movement', 'kit', 'asks', 'version'] as const satisfies readonly ListName[];

export interface ListsProps {
  readonly here: ListName;
  /** The first page has programmes to go on to. */
  readonly programmes: boolean;
  readonly words: LibraryWords;
}

export function Lists({ here, programmes, words }: ListsProps) {
  return (
    <nav class="lists" aria-label={words.lists}>
      <ul class="links">
        {NAMES.map((name) => (
          <li>
            <a href={LISTS[name]} aria-current={name === here ? 'page' : undefined}>
              {listTitle(name, words)}
            </a>
          </li>
        ))}
        {programmes ? (
          <li>
            <a href={`${here === 'movement' ? '' : LISTS.movement}#programmes`}>{words.programmes}</a>
          </li>
        ) : null}
        <li>
          <a href="rulebook/index.html">{words.rulebookHead}</a>
        </li>
      </ul>
    </nav>
  );
}
