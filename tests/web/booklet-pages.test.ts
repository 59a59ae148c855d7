/** The web booklet as text: its policy, what it may not contain, and the shell that is the same for everyone. */
import { createHash } from 'node:crypto';
import { gzipSync } from 'node:zlib';
import { beforeAll, describe, expect, test } from 'vitest';
import { webSources } from '../../src/app/web-sources.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { charactersOf, LETTER_SETS, letterSetsIn } from '../../src/web/letters.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import {
  jsonForHtml,
  renderBookletFile,
  renderBookletFolder,
  renderPayload,
  shellFiles,
} from '../../src/web/render-booklet.js';
import type { ShellParts } from '../../src/web/shell-parts.js';
import { fixtureBooklet, longNamesBooklet } from '../fixtures/booklet.js';
import { hostileBooklet } from './hostile-booklet.js';
import { HOSTILE } from './library-fixture.js';
import { fixturePlan, SECRET } from './plan-fixture.js';

const plan = clientPlanOf(fixturePlan);
let parts: ShellParts;
let file: string;
let folder: ReadonlyMap<string, Uint8Array>;

beforeAll(async () => {
  parts = await prepareShell(webSources());
  file = renderBookletFile(fixtureBooklet, plan, parts);
  folder = new Map((await renderBookletFolder(fixtureBooklet, plan, parts)).map(({ path, bytes }) => [path, bytes]));
});

const textOf = (path: string): string => new TextDecoder().decode(folder.get(path));
const pages = (): readonly string[] => [file, textOf('index.html'), textOf('payload.html')];

function policyOf(html: string): Map<string, string> {
  const content = /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(html)?.[1] ?? '';
  return new Map(
    content.split('; ').map((one) => {
      const [name = '', ...sources] = one.split(' ');
      return [name, sources.join(' ')] as const;
    }),
  );
}

const contents = (html: string, element: string): readonly string[] =>
  [...html.matchAll(new RegExp(`<${element}>([\\s\\S]*?)</${element}>`, 'g'))].map((match) => match[1] ?? '');
const sha256 = (text: string): string => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

describe('content-security policy', () => {
  test('names exactly the styles and scripts that stand in the page', () => {
    for (const html of pages()) {
      const policy = policyOf(html);
      for (const element of ['style', 'script']) {
        const inside = contents(html, element).map(sha256);
        const named = (policy.get(`${element}-src`) ?? '').split(' ').filter((source) => source.startsWith("'sha256-"));
        expect(named.sort()).toEqual([...inside].sort());
      }
    }
    expect(contents(file, 'style')).toHaveLength(2);
    expect(contents(file, 'script')).toHaveLength(2);
  });

  test('allows nothing by default, and nothing unsafe', () => {
    for (const html of pages()) {
      expect(policyOf(html).get('default-src')).toBe("'none'");
      expect([...policyOf(html).values()].join(' ')).not.toMatch(/unsafe|\*|https?:|blob:/);
    }
    expect(policyOf(textOf('payload.html')).has('script-src')).toBe(false);
  });
});

describe('what no page may hold', () => {
  test('style attributes, handlers, or an address elsewhere', () => {
    for (const html of [...pages(), renderBookletFile(longNamesBooklet, plan, parts)]) {
      const tags = html.replaceAll(/<(style|script)[^>]*>[\s\S]*?<\/\1>/g, '').match(/<[^>]+>/g) ?? [];
      expect(tags.length).toBeGreaterThan(10);
      expect(tags.filter((tag) => /\sstyle=|\son[a-z]+=/.test(tag))).toEqual([]);
      expect(html.match(/https?:\/\/(?!www\.w3\.org\/)[^"')\s]*/g) ?? []).toEqual([]);
      expect(html).not.toMatch(/(?:src|href)="\/|url\(\/|@import/);
    }
    expect(textOf('booklet.css')).not.toMatch(/https?:|\/\/|@import/);
  });

  test('what is the coach’s own', () => {
    for (const html of pages()) expect(html).not.toContain(SECRET);
  });

  test('it asks search engines and referrers to keep out', () => {
    for (const html of pages()) {
      expect(html).toContain('<meta name="robots" content="noindex, nofollow"/>');
      expect(html).toContain('<meta name="referrer" content="no-referrer"/>');
    }
  });
});

describe('the shell', () => {
  test('is the same bytes whoever the client is', async () => {
    const other = new Map(
      (await renderBookletFolder(longNamesBooklet, plan, parts)).map(({ path, bytes }) => [path, bytes]),
    );
    expect([...other.keys()]).toEqual([...folder.keys()]);
    for (const [path, bytes] of folder) {
      if (path !== 'payload.html') expect(other.get(path)).toEqual(bytes);
    }
    expect((await shellFiles(parts, 'en-GB')).map(({ path }) => path)).toEqual(
      [...folder.keys()].filter((path) => path !== 'payload.html'),
    );
  });

  test('speaks the booklet’s language, on a home screen too', async () => {
    const norwegian = new Map((await shellFiles(parts, 'nb')).map(({ path, bytes }) => [path, bytes]));
    const read = (path: string): string => new TextDecoder().decode(norwegian.get(path));
    expect(read('index.html')).toContain('<html lang="nb" dir="ltr"');
    expect(read('index.html')).toContain('Åpne heftet ditt');
    expect(JSON.parse(read('manifest.webmanifest'))).toMatchObject({ lang: 'nb', name: 'Heftet ditt' });
    expect(textOf('index.html')).toContain('Open your booklet');
  });

  test('knows no client', () => {
    expect(textOf('payload.html')).toContain('Rowan Ashby');
    for (const [path, bytes] of folder) {
      if (path !== 'payload.html') expect(new TextDecoder().decode(bytes)).not.toContain('Rowan');
    }
  });
});

test('the height of the screen is asked for in the units of older browsers too', () => {
  const style = textOf('booklet.css');
  const newer = /@supports \(height: ?1svh\) ?\{[^{}]*\{[^{}]*\}\}/g;
  expect(style.match(newer)).toHaveLength(1);
  expect(style.replaceAll(newer, '')).not.toMatch(/\d[sdl]v[hw]\b/);
  expect(style).toMatch(/--hundredth: ?1vh/);
});

describe('letters', () => {
  test('a file carries the faces its words need, and no more', () => {
    expect(letterSetsIn('Goblet squat: 16 kg × 8, “heels down” – Łukasz')).toEqual(['latin']);
    expect(letterSetsIn('Nguyễn')).toEqual(['latin', 'vietnamese']);
    expect(letterSetsIn('Κάθισμα, Присед')).toEqual(['latin', 'greek', 'cyrillic']);
    expect(contents(renderBookletFile(longNamesBooklet, plan, parts), 'style')).toHaveLength(4);
  });

  test('no character stands in two sets', () => {
    const all = LETTER_SETS.flatMap((set) => [...charactersOf(set)]);
    expect(new Set(all).size).toBe(all.length);
  });
});

describe('hostile words', () => {
  test('stay words', () => {
    const html = renderPayload(hostileBooklet, plan).html;
    expect(html).toContain('&lt;script>alert(1)');
    expect(html.match(/<script/g)).toEqual(['<script']);
    expect(html).not.toContain('</style>');
    expect(html).not.toMatch(/href="javascript:/i);
  });

  test('data in the page cannot end its element', () => {
    const text = jsonForHtml({ name: `</script>${HOSTILE}<!--` });
    expect(text).not.toContain('<');
    expect(JSON.parse(text)).toEqual({ name: `</script>${HOSTILE}<!--` });
  });
});

describe('the same bytes', () => {
  test('twice', async () => {
    const again = await prepareShell(webSources());
    expect(renderBookletFile(fixtureBooklet, plan, again)).toBe(file);
  });
});

describe('sizes after gzip stay within the budget of one hosted booklet', () => {
  const kilobytes = (...paths: readonly string[]): number =>
    paths.reduce((sum, path) => sum + gzipSync(folder.get(path) ?? '', { level: 9 }).length, 0) / 1000;

  test('words and plan 25 KB, shell with script and styles 60 KB, three faces 70 KB', () => {
    const fonts = [...folder.keys()].filter((path) => path.endsWith('-latin.woff2'));
    expect(fonts).toHaveLength(3);
    expect(kilobytes('payload.html')).toBeLessThan(25);
    expect(kilobytes('index.html', 'booklet.css')).toBeLessThan(60);
    expect(kilobytes(...fonts)).toBeLessThan(70);
  });
});
