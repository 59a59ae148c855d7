/** The frame of a library page below the index: the way back, and that it does not know who reads it, above and below. */
import type { ComponentChildren } from 'preact';
import type { LibraryWords } from '../../src/words/library-words.js';
import { StudioPage } from '../studio-page.js';

export interface InnerPageProps {
  readonly title: string;
  readonly words: LibraryWords;
  readonly children: ComponentChildren;
}

export function InnerPage({ title, words, children }: InnerPageProps) {
  return (
    <StudioPage
      title={title}
      home={{ href: '../index.html', text: words.back }}
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
