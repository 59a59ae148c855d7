/** The page that a sealed booklet is opened on, and what stands on its cover once it is open. It says nothing of anybody. */
import type { SealedBooklet } from '../../src/model/sealed.js';
import type { Catalogue } from '../../src/words/catalogue.js';
import { SEAL_FAULTS } from '../../src/words/seal-words.js';

export function Opening({ sealed, words }: { readonly sealed: SealedBooklet; readonly words: Catalogue }) {
  const { seal, page } = words;
  return (
    <div class="shell opening">
      <h1>{page.shellTitle}</h1>
      <div class="unopened">
        {seal.unopened.map((line) => (
          <p>{line}</p>
        ))}
      </div>
      <form hidden>
        {sealed.by === 'words' ? null : (
          <div class="by-link">
            <p>{seal.askLink}</p>
            <label for="opening-link">{seal.linkLabel}</label>
            <input id="opening-link" type="text" inputMode="url" autocomplete="off" spellcheck={false} />
          </div>
        )}
        {sealed.by === 'link' ? (
          <p class="ready">{seal.ready}</p>
        ) : (
          <div class="by-words">
            <p>{seal.askWords}</p>
            <label for="opening-words">{seal.wordsLabel}</label>
            <input id="opening-words" type="text" autocomplete="off" autocapitalize="none" spellcheck={false} />
          </div>
        )}
        <p class="said" role="alert" />
        <button type="submit" class="tap filled" value="kept">
          {seal.openKept}
        </button>
        <p class="note">{seal.keptNote}</p>
        <button type="submit" class="tap" value="once">
          {seal.openOnce}
        </button>
        <p class="busy" hidden>
          {seal.opening}
        </p>
      </form>
      {SEAL_FAULTS.map((fault) => (
        <p data-fault={fault} hidden>
          {seal.fault[fault]}
        </p>
      ))}
      <section class="opened" hidden>
        {sealed.beside.map((part) => (
          <button type="button" class="tap" data-part={part}>
            {seal[part]}
          </button>
        ))}
        <p class="not-had" role="alert" data-says={seal.notHad} />
        <button type="button" class="tap forget">
          {seal.forget}
        </button>
        <div class="forgetting" hidden>
          <p>{seal.forgetAsk}</p>
          <button type="button" class="tap yes">
            {seal.forgetYes}
          </button>
          <button type="button" class="tap no">
            {seal.forgetNo}
          </button>
        </div>
      </section>
    </div>
  );
}
