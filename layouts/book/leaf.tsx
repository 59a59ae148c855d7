/** The frame of a leaf: its heading, its sheet with the margin, and the way back and on at its foot. */
import type { ComponentChildren } from 'preact';
import type { Book, Leaf } from './leaves.js';
import { OwnName } from './own-name.js';

export interface LeafProps {
  readonly book: Book;
  readonly leaf: Leaf;
  /** Small lines above the heading: where in the booklet this stands. */
  readonly where?: ComponentChildren;
  /** Other ways from here, above the way back and on. */
  readonly ways?: ComponentChildren;
  readonly children: ComponentChildren;
}

export function Way({ to, children }: { readonly to: string; readonly children: ComponentChildren }) {
  return (
    <li>
      <a href={`#${to}`}>{children}</a>
    </li>
  );
}

const Title = ({ book, leaf }: { readonly book: Book; readonly leaf: Leaf }) =>
  leaf.kind === 'turn' || leaf.kind === 'exercise' ? <OwnName book={book} name={leaf.title} /> : leaf.title;

/**
 * To the leaf before and the leaf after. One that stands right beside this one in the page is read without a link: where one leaf is
 * shown at a time, whoever shows it puts the link there. The cover has its own, since it is shown before the others have come.
 */
function BackAndOn({ book, leaf }: { readonly book: Book; readonly leaf: Leaf }) {
  const at = book.leaves.indexOf(leaf);
  const inPage = book.inPage.indexOf(leaf);
  const apart = (way: -1 | 1): Leaf | undefined => {
    const other = book.leaves[at + way];
    return leaf.kind === 'cover' || other !== book.inPage[inPage + way] ? other : undefined;
  };
  const [before, after] = [apart(-1), apart(1)];
  if (before === undefined && after === undefined) return null;
  return (
    <p class="on">
      {before ? (
        <a class="back" href={`#${before.id}`}>
          {book.labels.previous}
        </a>
      ) : null}
      {after ? (
        <a class="main" href={`#${after.id}`}>
          <span>
            {book.labels.next}: <Title book={book} leaf={after} />
          </span>
        </a>
      ) : null}
    </p>
  );
}

export function LeafFrame({ book, leaf, where, ways, children }: LeafProps) {
  return (
    <article class={`leaf ${leaf.kind}`} id={leaf.id}>
      <div class="sheet">
        <header>
          {where}
          {leaf.kind === 'cover' ? null : (
            <h2>
              <Title book={book} leaf={leaf} />
            </h2>
          )}
        </header>
        {children}
        <footer>
          {ways ? <ul class="ways">{ways}</ul> : null}
          <BackAndOn book={book} leaf={leaf} />
        </footer>
      </div>
    </article>
  );
}
