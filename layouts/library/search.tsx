/** Where one types to look for an exercise; shown by its script, which alone can answer. */
import type { SearchWords } from '../../src/words/search-words.js';

export function Search({ words }: { readonly words: SearchWords }) {
  return (
    <search class="search" hidden>
      <form>
        <label for="look-for">{words.search}</label>
        <input
          id="look-for"
          type="search"
          autocomplete="off"
          autocapitalize="none"
          spellcheck={false}
          aria-describedby="look-for-hint"
        />
        <p class="soft" id="look-for-hint">
          {words.hint}
        </p>
        <p class="read-back">
          <output for="look-for"></output>
        </p>
        <ul class="links found"></ul>
      </form>
    </search>
  );
}
