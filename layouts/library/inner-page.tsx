/** Every page of the library but the first: the way back, and that it does not know its reader. */
import type { ComponentChildren } from 'preact';
import type { LibraryWords } from '../../src/words/library-words.js';
import { StudioPage } from '../studio-page.js';

export interface InnerPageProps {
  readonly title: string;
  readonly words: LibraryWords;
  /** The way to the library's root. */
  readonly root?: '' | '../';
  /** Printed, it is one card. */
  readonly card?: true;
  readonly children: ComponentChildren;
}

export function InnerPage({ title, words, root = '../', card, children }: InnerPageProps) {
  return (
    <StudioPage
      title={title}
      {...(card ? { kind: 'card' } : {})}
      home={{ href: `${root}index.html`, text: words.back }}
      foot={
        <p>
          {words.doesNotKnowYou} {words.notMedical}
        </p>
      }
    >
      <p class="ask-first">{words.doesNotKnowYou}</p>
      {children}
    </StudioPage>
  );
}
