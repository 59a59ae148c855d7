/** For programs that read along: the map of all pages (sitemaps.org, protocol 0.9) and the feed (Atom, RFC 4287). */

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
/** What XML 1.0 (section 2.2) has no place for falls away. */
const escaped = (text: string): string =>
  text
    .replaceAll(/[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/gu, '')
    .replaceAll(/[&<>"]/g, (sign) => ENTITIES[sign] ?? '');

const HEAD = '<?xml version="1.0" encoding="utf-8"?>';

export interface MappedPage {
  readonly address: string;
  /** ISO date; absent where nobody knows. */
  readonly changed?: string | undefined;
}

export const writeSitemap = (pages: readonly MappedPage[]): string =>
  [
    HEAD,
    '<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">',
    ...pages.map(
      ({ address, changed }) =>
        `<url><loc>${escaped(address)}</loc>${changed === undefined ? '' : `<lastmod>${changed}</lastmod>`}</url>`,
    ),
    '</urlset>',
    '',
  ].join('\n');

export interface FeedEntry {
  readonly address: string;
  readonly title: string;
  readonly summary: string;
  /** ISO date. */
  readonly changed: string;
}

export interface Feed {
  /** Whole address of the feed itself, and of the library. */
  readonly address: string;
  readonly home: string;
  readonly title: string;
  readonly subtitle: string;
  readonly author: string;
  readonly language: string;
  readonly entries: readonly FeedEntry[];
}

/** Newest first; of one day, by address. Readers keep what they have seen, so that the newest are enough. */
const MOST = 50;
/** A feed of nothing has been so since then. */
const BEFORE_ALL = '1970-01-01';

export function writeFeed({ address, home, title, subtitle, author, language, entries }: Feed): string {
  const newest = [...entries]
    .sort((a, b) => (a.changed !== b.changed ? (a.changed < b.changed ? 1 : -1) : a.address < b.address ? -1 : 1))
    .slice(0, MOST);
  const midnight = (day: string): string => `${day}T00:00:00Z`;
  return [
    HEAD,
    `<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="${escaped(language)}">`,
    `<id>${escaped(address)}</id>`,
    `<title>${escaped(title)}</title>`,
    `<subtitle>${escaped(subtitle)}</subtitle>`,
    `<updated>${midnight(newest[0]?.changed ?? BEFORE_ALL)}</updated>`,
    `<link rel="self" type="application/atom+xml" href="${escaped(address)}"/>`,
    `<link rel="alternate" type="text/html" href="${escaped(home)}"/>`,
    `<author><name>${escaped(author)}</name></author>`,
    ...newest.map((entry) =>
      [
        '<entry>',
        `<id>${escaped(entry.address)}</id>`,
        `<title>${escaped(entry.title)}</title>`,
        `<updated>${midnight(entry.changed)}</updated>`,
        `<link rel="alternate" type="text/html" href="${escaped(entry.address)}"/>`,
        `<summary>${escaped(entry.summary)}</summary>`,
        '</entry>',
      ].join('\n'),
    ),
    '</feed>',
    '',
  ].join('\n');
}
