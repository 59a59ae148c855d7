/** The partner's page alone, to stand beside a hosted booklet and be handed over: it runs nothing and leads nowhere. */
import { renderToString } from 'preact-render-to-string';
import { PartnerAlone } from '../../layouts/book/partner.js';
import type { Booklet } from '../model/booklet.js';
import { payloadPolicy } from './policy.js';
import type { OutputFile } from './render-booklet.js';
import { renderPage } from './render-page.js';

/** A file of the booklet's folder. */
export const PARTNER = 'partner.html';

/** Nothing where the booklet has no partner. Its style is the booklet's own, beside it. */
export function renderPartner(booklet: Booklet): readonly OutputFile[] {
  const part = booklet.parts.find((one) => one.kind === 'partner');
  if (part === undefined) return [];
  const html = renderPage({
    title: part.title,
    language: booklet.language,
    direction: booklet.direction,
    policy: payloadPolicy(),
    styles: [],
    styleFiles: ['booklet.css'],
    scripts: [],
    body: renderToString(<PartnerAlone booklet={booklet} part={part} />),
  });
  return [{ path: PARTNER, bytes: new TextEncoder().encode(html) }];
}
