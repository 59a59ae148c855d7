/**
 * The page a host shows for one it does not have. It may be shown at any depth of addresses, so its style stands in it,
 * and it leads to the first page and to the faces only where the studio says where those are. The faces go by their path
 * alone: nothing is asked of another host, wherever it is shown.
 */
import { renderToString } from 'preact-render-to-string';
import { NotHere } from '../../../layouts/library/not-here-page.js';
import type { Studio } from '../../model/studio.js';
import { sayLibraryWords } from '../../words/library-words.js';
import { speechOf } from '../../words/speech.js';
import { libraryPolicy } from '../policy.js';
import { bundleStyle, type WebSources } from '../prepare-shell.js';
import { renderPage } from '../render-page.js';
import { type FontFile, fontFaceRules, hashSource } from '../shell-parts.js';
import type { Page } from '../write-pages.js';
import { addressesAt, NOT_HERE } from './addresses.js';

export async function renderNotHere(studio: Studio, fonts: readonly FontFile[], sources: WebSources): Promise<Page> {
  const words = sayLibraryWords(studio.language);
  const addressOf = studio.address === undefined ? undefined : addressesAt(studio.address);
  const faces =
    addressOf === undefined
      ? ''
      : fontFaceRules(fonts, ({ name }) => new URL(addressOf(`fonts/${name}`)).pathname, 'optional');
  const style = faces + (await bundleStyle('studio.css', sources));
  const policy = libraryPolicy(undefined, [{ text: style, source: await hashSource(style) }]);
  const home = addressOf?.('');
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
