/**
 * The page a host shows for one it does not have. It may be shown at any depth of addresses, so its style stands in it,
 * and it leads to the first page only where the studio says where that is.
 */
import { renderToString } from 'preact-render-to-string';
import { NotHere } from '../../../layouts/library/not-here-page.js';
import type { Studio } from '../../model/studio.js';
import { sayLibraryWords } from '../../words/library-words.js';
import { speechOf } from '../../words/speech.js';
import { libraryPolicy } from '../policy.js';
import { bundleStyle, type WebSources } from '../prepare-shell.js';
import { renderPage } from '../render-page.js';
import { hashSource } from '../shell-parts.js';
import type { Page } from '../write-pages.js';
import { addressesAt, NOT_HERE } from './addresses.js';

export async function renderNotHere(studio: Studio, sources: WebSources): Promise<Page> {
  const words = sayLibraryWords(studio.language);
  const style = await bundleStyle('studio.css', sources);
  const policy = libraryPolicy(undefined, [{ text: style, source: await hashSource(style) }]);
  const home = studio.address === undefined ? undefined : addressesAt(studio.address)('');
  const render = () =>
    renderPage({
      title: words.notHere,
      language: studio.language,
      direction: speechOf(studio.language).direction,
      policy,
      styles: [style],
      styleFiles: [],
      scripts: [],
      body: renderToString(<NotHere words={words} home={home} />),
    });
  return { path: NOT_HERE, render };
}
