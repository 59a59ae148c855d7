/**
 * What others are told of the library: whole addresses, data in the vocabulary of schema.org (held to schema-dts when
 * compiled), the map of pages (sitemaps.org, protocol 0.9), the feed (RFC 4287).
 */
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { webSources } from '../../src/app/web-sources.js';
import { exerciseId } from '../../src/model/identity.js';
import { addressesAt } from '../../src/web/library/addresses.js';
import { libraryPages, renderLibrary } from '../../src/web/library/render-library.js';
import { writeFeed } from '../../src/web/library/syndicate.js';
import { hashSource } from '../../src/web/shell-parts.js';
import { fixturePublic, HOSTILE } from './library-fixture.js';

const studio = { ...fixturePublic.studio, address: 'https://slate-yard.example/library' };
const hosted = { ...fixturePublic, studio };
const changed = new Map([
  [exerciseId('box-squat'), '2026-11-20'],
  [exerciseId('hostile'), '2026-11-28'],
]);
const plain = await libraryPages({ library: fixturePublic, rulebook: [] });
const pages = await libraryPages({ library: hosted, rulebook: [], changed });
const page = (path: string, of = pages): string => of.find((one) => one.path === path)?.render() ?? '';
const dataText = (html: string): string =>
  /<script type="application\/ld\+json">([^<]*)<\/script>/.exec(html)?.[1] ?? '';
const dataOf = (html: string): Record<string, unknown> => JSON.parse(dataText(html));

let folder: string;
const written = (name: string): Promise<string> => readFile(join(folder, 'hosted', name), 'utf8');
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'told-'));
  const run = { rulebook: [], fonts: [FACE], sources: webSources() };
  await renderLibrary({ ...run, library: hosted, changed, out: join(folder, 'hosted') });
  await renderLibrary({ ...run, library: fixturePublic, changed, out: join(folder, 'plain') });
});
afterAll(() => rm(folder, { recursive: true, force: true }));

describe('addresses', () => {
  test.each([
    ['https://a.example', 'exercises/x.html', 'https://a.example/exercises/x.html'],
    ['https://a.example/', 'index.html', 'https://a.example/'],
    ['https://a.example/deep/er', 'rulebook/index.html', 'https://a.example/deep/er/rulebook/'],
    ['https://a.example/deep/index.html?x#y', '', 'https://a.example/deep/'],
    ['https://a.example:8080/a/', 'exercises/ö&.html', 'https://a.example:8080/a/exercises/%C3%B6%26.html'],
  ])('of %s, %s', (home, path, address) => {
    expect(addressesAt(home)(path)).toBe(address);
  });

  test('are canonical on every page where the studio says where it is, and nowhere else', () => {
    for (const { path, render } of pages) {
      const address = addressesAt(studio.address)(path);
      expect(render()).toContain(`<link rel="canonical" href="${address}"/>`);
    }
    for (const { render } of plain) expect(render()).not.toMatch(/rel="canonical"|og:url|atom\+xml/);
  });
});

describe('data for crawlers', () => {
  test('an exercise is told as instructions, step by step, with what it needs', () => {
    expect(dataOf(page('exercises/goblet-squat.html'))).toEqual({
      '@context': 'https://schema.org',
      '@type': 'HowTo',
      name: 'Goblet squat',
      description: 'A squat with one bell held close.',
      inLanguage: 'en-GB',
      isPartOf: {
        '@type': 'WebSite',
        name: 'Slate Yard: the exercises',
        url: 'https://slate-yard.example/library/',
        publisher: { '@type': 'Organization', name: 'Slate Yard', address: 'Harrowby' },
      },
      url: 'https://slate-yard.example/library/exercises/goblet-squat.html',
      tool: [{ '@type': 'HowToTool', name: 'One bell' }],
      step: [
        { '@type': 'HowToStep', name: 'Set-up', text: 'Feet a little wider than your hips.' },
        { '@type': 'HowToStep', name: 'Pick up', text: 'Sit down to it with a flat back.' },
        { '@type': 'HowToStep', name: 'Down', text: 'Sit between your heels.' },
        { '@type': 'HowToStep', text: 'Stand tall.' },
        { '@type': 'HowToStep', name: 'Put down', text: 'Lower it between your feet.' },
      ],
    });
  });

  test('no page is of a kind that speaks of health, and no address stands where none is known', () => {
    const kinds = plain.map(({ path, render }) => [path, dataOf(render())['@type']]);
    expect(kinds).toEqual([
      ['index.html', 'CollectionPage'],
      ['by-kit.html', 'CollectionPage'],
      ['by-what-it-asks.html', 'CollectionPage'],
      ['easier-and-harder.html', 'CollectionPage'],
      ['exercises/box-squat.html', 'HowTo'],
      ['exercises/goblet-squat.html', 'HowTo'],
      ['exercises/hostile.html', 'HowTo'],
      ['programmes/two-days.html', 'CreativeWork'],
      ['rulebook/index.html', 'WebPage'],
    ]);
    for (const { render } of plain) {
      const text = dataText(render());
      expect(text).not.toMatch(/"(url|image|relevantSpecialty|medicalAudience|intensity|pathophysiology)"/);
    }
  });

  test('ends its element nowhere, and its own digest is what the policy lets stand', async () => {
    const html = page('exercises/hostile.html');
    expect(dataOf(html).name).toBe(HOSTILE);
    expect(html).toContain(
      `script-src ${await hashSource(dataText(html))}`.replaceAll("'", '&#39;').replaceAll('&#39;', "'"),
    );
  });
});

describe('for programs that read along', () => {
  test('the map names every listed page once, with the day where it is known', async () => {
    const map = await written('sitemap.xml');
    const locations = [...map.matchAll(/<loc>([^<]*)<\/loc>/g)].map((match) => match[1]);
    expect(locations).toEqual(pages.map(({ path }) => addressesAt(studio.address)(path)));
    expect(map).toContain('box-squat.html</loc><lastmod>2026-11-20</lastmod>');
    expect(map).not.toContain('404');
  });

  test('the feed is well formed, newest first, and holds what RFC 4287 asks of a feed and of each entry', async () => {
    const feed = await written('feed.xml');
    const entries = feed.split('<entry>').slice(1);
    expect(entries.map((entry) => /<updated>([^<]*)/.exec(entry)?.[1])).toEqual([
      '2026-11-28T00:00:00Z',
      '2026-11-20T00:00:00Z',
    ]);
    const [head = ''] = feed.split('<entry>');
    // Section 4.1.1: one id, one title, one updated, and an author where its entries have none.
    for (const one of ['id', 'title', 'updated', 'author'])
      expect(head.match(new RegExp(`<${one}>`, 'g'))).toHaveLength(1);
    expect(head).toContain(
      '<link rel="self" type="application/atom+xml" href="https://slate-yard.example/library/feed.xml"/>',
    );
    // Section 4.1.2.
    for (const entry of entries) {
      for (const one of ['id', 'title', 'updated', 'summary'])
        expect(entry.match(new RegExp(`<${one}>`, 'g'))).toHaveLength(1);
    }
    expect(page('index.html')).toContain('href="https://slate-yard.example/library/feed.xml"');
    expect(writeFeed({ ...EMPTY, title: 'a \u0000\u{1F3CB} & <b>' })).toContain(
      '<title>a \u{1F3CB} &amp; &lt;b&gt;</title>',
    );
  });

  test('neither is written where no address is known', async () => {
    const names = await readdir(join(folder, 'plain'));
    expect(names).not.toContain('sitemap.xml');
    expect(names).not.toContain('feed.xml');
    expect(names).toContain('404.html');
  });

  test('the page for what is not here stands alone at any depth, and is not listed', async () => {
    const html = await written('404.html');
    expect(html).toContain('noindex');
    expect(html).not.toMatch(/<link rel="stylesheet"|<script/);
    expect(html).toContain('<a href="https://slate-yard.example/library/">All exercises</a>');
    expect(await readFile(join(folder, 'plain', '404.html'), 'utf8')).not.toMatch(/<a |@font-face/);
    // By its path alone: another host that shows the page is asked for nothing.
    expect(html).toContain('src:url("/library/fonts/literata-400-latin.woff2")');
  });
});

const FACE = {
  family: 'Literata',
  weight: 400,
  letters: 'latin',
  name: 'literata-400-latin.woff2',
  bytes: new Uint8Array(),
} as const;

const EMPTY = {
  address: 'https://a.example/feed.xml',
  home: 'https://a.example/',
  title: '',
  subtitle: '',
  author: '',
  language: 'en',
  entries: [],
};
