/** The page that carries a client's part sealed: the same for everybody of a language, but for what nobody can read. */
import { renderToString } from 'preact-render-to-string';
import { Opening } from '../../layouts/book/opening.js';
import type { SealedBooklet } from '../model/sealed.js';
import { directionOf } from '../words/language.js';
import { speechOf } from '../words/speech.js';
import { payloadPolicy } from './policy.js';
import { jsonForHtml } from './render-booklet.js';
import { renderPage } from './render-page.js';

/** `language` is the booklet's, a BCP 47 tag. Its style is the booklet's own, beside it. */
export function renderSealed(sealed: SealedBooklet, language: string): Uint8Array {
  const { words } = speechOf(language);
  const html = renderPage({
    title: words.page.shellTitle,
    language: words.language,
    direction: directionOf(words.language),
    policy: payloadPolicy(),
    styles: [],
    styleFiles: ['booklet.css'],
    scripts: [],
    body: `${renderToString(<Opening sealed={sealed} words={words} />)}<script type="application/json" id="sealed">${jsonForHtml(sealed)}</script>`,
  });
  return new TextEncoder().encode(html);
}
