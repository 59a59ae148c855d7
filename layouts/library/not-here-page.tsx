/** What a host shows where it has no page. It may stand at any depth, so that it leads only where the address is known. */
import type { LibraryWords } from '../../src/words/library-words.js';
import { StudioPage } from '../studio-page.js';

export interface NotHereProps {
  readonly words: LibraryWords;
  /** Of the library's first page; absent while nobody knows where it will be hosted. */
  readonly home?: string | undefined;
}

export function NotHere({ words, home }: NotHereProps) {
  return (
    <StudioPage title={words.notHere} foot={<p>{words.notMedical}</p>}>
      <p>{words.notHereWhy}</p>
      {home === undefined ? null : (
        <p>
          <a href={home}>{words.back}</a>
        </p>
      )}
      <p class="ask-first">{words.doesNotKnowYou}</p>
    </StudioPage>
  );
}
