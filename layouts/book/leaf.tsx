/** The frame of a leaf: its heading, its sheet with the margin, and the ways from it at its foot. */
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
 * To the leaf after, where it does not stand right below this one, and the session's own list does not lead to it. All other ways back
 * and on are put there by whoever shows one leaf at a time. The cover has its own, since it is shown before the others have come.
 */
function On({ book, leaf }: { readonly book: Book; readonly leaf: Leaf }) {
  const after = book.leaves[book.leaves.indexOf(leaf) + 1];
  const below = book.inPage[book.inPage.indexOf(leaf) + 1];
  const isLed = leaf.kind === 'session' && after?.kind === 'turn';
  if (after === undefined || (leaf.kind !== 'cover' && (after === below || isLed))) return null;
  return (
    <p class="on">
      <a class="main" href={`#${after.id}`}>
        <span>
          {book.labels.next}: <Title book={book} leaf={after} />
        </span>
      </a>
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
          <On book={book} leaf={leaf} />
        </footer>
      </div>
    </article>
  );
}
