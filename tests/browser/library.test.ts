/**
 * The public library in Chromium, made from the demo's own exercises: as a stranger with scripting off, from a disk, from
 * a host under a path, without a network, in the dark, at 360 pixels, and on paper.
 */
import { spawnSync } from 'node:child_process';
import { mkdtemp, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { webSources } from '../../src/app/web-sources.js';
import { listRulebook } from '../../src/engine/rulebook.js';
import type { Exercise } from '../../src/model/exercise.js';
import type { LoadNeed } from '../../src/model/kit.js';
import { type PublicLibrary, publicPartOf } from '../../src/model/public-library.js';
import { renderLibrary } from '../../src/web/library/render-library.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import { DEEP, runs } from '../deep.js';
import { drawnOf } from '../fixtures/drawn.js';
import { readDemo } from '../studio/demo-library.js';
import { axeFaults } from './axe.js';
import { type Held, holdPhone, listenTo, openBrowser } from './phone.js';
import { type Served, serveFolder } from './serve-folder.js';

const UNDER = '/studio/library/';
let browser: Browser;
let folder: string;
let library: PublicLibrary;
let context: BrowserContext | undefined;
let served: Served | undefined;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'library-'));
  const sources = webSources();
  const parts = await prepareShell(sources);
  const demo = (await readDemo()).library;
  const studio = { ...demo.studio, address: `https://slate-yard.example${UNDER}` };
  library = publicPartOf({ ...demo, studio });
  const changed = new Map(library.exercises.map(({ id }) => [id, '2026-11-20']));
  const rulebook = listRulebook(demo.overrides);
  // Posing all of them takes long, and a card has the same room for every drawing.
  const one = drawnOf(['start', 'bottom']);
  const drawings = new Map(library.exercises.map(({ id }) => [id, one]));
  await renderLibrary({ library, rulebook, changed, drawings, out: folder, fonts: parts.fonts, sources });
  browser = await openBrowser();
});
afterEach(async () => {
  await context?.close();
  await served?.close();
  context = undefined;
  served = undefined;
});
afterAll(async () => {
  await browser?.close();
  await rm(folder, { recursive: true, force: true });
});

/** One page of each kind. */
const KINDS = [
  ...['index.html', 'by-kit.html', 'by-what-it-asks.html', 'easier-and-harder.html', 'exercises/goblet-squat.html'],
  ...['exercises/halo.html', 'programmes/two-days.html', 'rulebook/index.html', '404.html'],
] as const;
const fromDisk = (path: string): string => pathToFileURL(join(folder, path)).href;

async function open(path: string, held: Held = {}): Promise<Page> {
  context = await holdPhone(browser, held);
  const page = await context.newPage();
  await page.goto(fromDisk(path));
  return page;
}

async function filesOf(): Promise<ReadonlyMap<string, Uint8Array>> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  return new Map(await Promise.all(files.map(async (path) => [relative(folder, path), await readFile(path)] as const)));
}

const shownIn = (page: Page, list: string): Promise<readonly string[]> =>
  page.evaluate(
    (selector) =>
      [...document.querySelectorAll<HTMLElement>(`${selector} li`)]
        .filter((line) => line.checkVisibility())
        .map((line) => line.querySelector('a')?.textContent ?? ''),
    list,
  );

/** So little of what is seen may move where nothing was touched: a fifth of what https://web.dev/articles/cls calls good. */
const MOST_MOVED = 0.02;

test('nothing moves under a finger when search and faces come late', async () => {
  served = await serveFolder(await filesOf(), UNDER);
  context = await holdPhone(browser);
  const page = await context.newPage();
  // As tall as most: what stands below the search is seen.
  await page.setViewportSize({ width: 412, height: 823 });
  let come = (): void => undefined;
  const late = new Promise<void>((done) => {
    come = done;
  });
  for (const path of ['**/search.js', '**/fonts/*'])
    await page.route(path, (route) => late.then(() => route.continue()));
  await page.goto(served.address, { waitUntil: 'commit' });
  await page.waitForFunction(() => performance.getEntriesByName('first-contentful-paint').length > 0);
  await page.waitForTimeout(300);
  come();
  await page.waitForFunction(() => document.querySelector('.search:not([hidden])') !== null);
  const moved = await page.evaluate(
    () =>
      new Promise<number>((done) => {
        let sum = 0;
        new PerformanceObserver((list) => {
          for (const entry of list.getEntries()) sum += Number(Reflect.get(entry, 'value'));
        }).observe({ type: 'layout-shift', buffered: true });
        setTimeout(() => done(sum), 300);
      }),
  );
  expect(moved).toBeLessThan(MOST_MOVED);
});

describe.each(['light', 'dark'] as const)('every kind of page, %s', (scheme) => {
  test.each(KINDS)(
    '%s: axe finds nothing, nothing is wider than 360 pixels, nothing is complained of',
    async (path) => {
      context = await holdPhone(browser, { scheme });
      const page = await context.newPage();
      const { complaints, requests } = listenTo(page);
      // Only a host shows that page, and only there its faces are where it says.
      if (path === '404.html') served = await serveFolder(await filesOf(), UNDER);
      await page.goto(served === undefined ? fromDisk(path) : served.address + path);
      if (path === 'index.html') {
        await page.locator('summary').click();
        await page.fill('#look-for', 'chair');
        await page.waitForSelector('.found li');
      }
      const over = await page.evaluate(() => {
        const wide = document.documentElement.clientWidth;
        return [...document.querySelectorAll('body *')]
          .filter((one) => one.checkVisibility() && one.getBoundingClientRect().right > wide + 0.5)
          .map((one) => one.outerHTML.slice(0, 80));
      });
      expect(over).toEqual([]);
      expect(complaints).toEqual([]);
      expect(served?.missed ?? []).toEqual([]);
      expect(
        requests.filter((address) => !address.startsWith('data:') && !address.startsWith(served?.address ?? 'file:')),
      ).toEqual([]);
      // In the dark the colours alone are others.
      expect(await axeFaults(page, scheme === 'dark' ? { rules: ['color-contrast'] } : {})).toEqual([]);
    },
  );
});

test('every link of every page leads to a page that is there, and to a place on it', async () => {
  const files = await filesOf();
  const text = (path: string): string => new TextDecoder().decode(files.get(path));
  const lost: string[] = [];
  for (const path of files.keys()) {
    if (!path.endsWith('.html')) continue;
    for (const [, href = ''] of text(path).matchAll(/<(?:a|link rel="stylesheet"|script) (?:href|src)="([^"]*)"/g)) {
      const address = new URL(href, `https://slate-yard.example${UNDER}${path}`);
      if (!address.pathname.startsWith(UNDER)) continue;
      const to = address.pathname.slice(UNDER.length).replace(/(^|\/)$/, '$1index.html');
      const place = address.hash.slice(1);
      if (!files.has(to) || (place !== '' && !text(to).includes(`id="${place}"`))) lost.push(`${path}: ${href}`);
    }
  }
  expect(lost).toEqual([]);
});

test('the map and the feed are well-formed XML', async () => {
  const page = await open('404.html');
  for (const name of ['sitemap.xml', 'feed.xml']) {
    const found = await page.evaluate(
      (text) => {
        const read = new DOMParser().parseFromString(text, 'application/xml');
        return [
          read.querySelector('parsererror')?.textContent ?? '',
          read.querySelectorAll('url, entry').length,
        ] as const;
      },
      await readFile(join(folder, name), 'utf8'),
    );
    expect(found[0]).toBe('');
    expect(found[1]).toBeGreaterThan(library.exercises.length - 40);
  }
});

describe('the sentence', () => {
  /** What of a need somebody with these words could meet, said anew from the exercise's facts. */
  const meets = (need: LoadNeed, has: ReadonlySet<string>): boolean => {
    if (need.kind === 'bar' || need.kind === 'band') return has.has(need.kind);
    const alike = has.has(`${need.kind}-alike`);
    const two = alike || has.has(`${need.kind}-unlike`);
    return need.count === 1 ? two || has.has(need.kind) : need.unequal ? two : alike;
  };
  const fits = ({ facts: { kit, asks } }: Exercise, have: readonly string[], out: readonly string[]): boolean => {
    const has = new Set(have);
    const loaded = kit.unloaded || kit.load.length === 0 || kit.load.some((need) => meets(need, has));
    const kitThere = have.length === 0 || (loaded && kit.things.every((thing) => has.has(thing)));
    return kitThere && !asks.some(({ of }) => out.includes(of.replaceAll(' ', '-')));
  };
  const SENTENCES: readonly (readonly [have: readonly string[], out: readonly string[]])[] = [
    [[], []],
    [['nothing'], []],
    [['chair', 'bell'], ['overhead']],
    [['bell-alike', 'wall'], []],
    [['bell-unlike'], ['impact', 'speed']],
    [['dumbbell-alike', 'step', 'mat'], ['floor']],
    [['bar', 'band'], ['grip']],
    [[], ['knee', 'lower-back']],
    [
      ['bell', 'chair', 'wall', 'step', 'mat', 'band', 'bar'],
      ['balance', 'lying-on-the-back'],
    ],
  ];

  test.each([false, true])('leaves in what fits and nothing else, with scripting %s', async (javaScript) => {
    const page = await open('index.html', { javaScript });
    await page.locator('summary').click();
    for (const [have, out] of SENTENCES) {
      await page.locator('.sentence').evaluate((form: HTMLFormElement) => form.reset());
      for (const word of have) await page.check(`#have-${word}`);
      for (const word of out) await page.check(`#out-${word}`);
      const expected = library.exercises.filter((of) => fits(of, have, out)).map(({ name }) => name);
      const shown = [...(await shownIn(page, '.entry[data-filtered]'))];
      expect([have, out, shown.sort()]).toEqual([have, out, expected.sort()]);
      expect(expected.length).toBeGreaterThan(0);
    }
  });

  test('is read back, counted, kept in the address, and begun again', async () => {
    const page = await open('index.html');
    await page.check('#have-chair');
    await page.check('#have-bell');
    await page.check('#out-overhead');
    const said = page.locator('.sentence output');
    const left = library.exercises.filter((of) => fits(of, ['chair', 'bell'], ['overhead'])).length;
    const sentence = `I have one bell and a chair; leave out overhead. ${left} of ${library.exercises.length} exercises are left.`;
    expect(await said.textContent()).toBe(sentence);
    const heads = await page.locator('.entry[data-filtered]:not([hidden]) h3').allTextContents();
    expect(heads).toContain('Squat');
    const sent = page.url();
    expect(sent).toMatch(/#have=bell,chair&out=overhead$/);
    await page.click('button[type=reset]');
    await expect.poll(() => said.textContent()).toBe('');
    expect((await shownIn(page, '.entry[data-filtered]')).length).toBe(library.exercises.length);
    await page.goto('about:blank');
    await page.goto(sent);
    expect(await said.textContent()).toBe(sentence);
    // A heading with nothing left beneath it goes.
    await page.goto('about:blank');
    await page.goto(`${fromDisk('index.html')}#have=nothing&spare=hip,knee`);
    expect(await page.locator('.entry[data-filtered][hidden] h3').allTextContents()).toContain('Squat');
  });

  test('stands before the words that it does not know its reader', async () => {
    const page = await open('index.html', { javaScript: false });
    const next = page.locator('.sentence + p');
    expect(await next.textContent()).toBe('This does not know you. Ask first.');
  });
});

describe('the search', () => {
  test('answers each key from a disk, forgives spelling, says why, and leaves out what the sentence does', async () => {
    const page = await open('index.html');
    await page.locator('#look-for').pressSequentially('goblit');
    await expect.poll(() => shownIn(page, '.found')).toContain('Goblet squat');
    const line = page.locator('.found li', { hasText: 'Goblet squat' });
    expect(await line.locator('.why-found').textContent()).toBe('‘goblit’ read as ‘goblet’: in its name.');
    expect(await page.locator('.search output').textContent()).toMatch(/exercises? found\.$/);
    await page.check('#have-nothing');
    expect(await shownIn(page, '.found')).not.toContain('Goblet squat');
    await page.fill('#look-for', 'goblet squat');
    const said = page.locator('.search output');
    await expect
      .poll(() => said.textContent())
      .toMatch(/go(?:es)? by that\. The sentence below leaves (?:it|them) out\.$/);
    await page.uncheck('#have-nothing');
    await line.getByRole('link').click();
    expect(await page.locator('h1').textContent()).toBe('Goblet squat');
  });

  test('says so where nothing is found, and where it cannot be had', async () => {
    const page = await open('index.html');
    await page.fill('#look-for', 'xqzvwk <b>');
    const said = page.locator('.search output');
    await expect.poll(() => said.textContent()).toContain('Nothing here goes by ‘xqzvwk <b>’');
    await page.fill('#look-for', '');
    await expect.poll(() => said.textContent()).toBe('');
    await page.route('**/search-index.js', (route) => route.abort());
    await page.reload();
    await page.fill('#look-for', 'halo');
    await expect.poll(() => said.textContent()).toContain('not here');
  });

  test('without scripting there is none, and every exercise is a link away', async () => {
    const page = await open('index.html', { javaScript: false });
    expect(await page.locator('.search').isVisible()).toBe(false);
    expect((await shownIn(page, '.entry[data-filtered]')).length).toBe(library.exercises.length);
  });

  test('works under a path of a host, and without a network what was put away and what was opened', async () => {
    served = await serveFolder(await filesOf(), UNDER);
    context = await holdPhone(browser);
    const page = await context.newPage();
    const { complaints } = listenTo(page);
    await page.goto(served.address);
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await page.goto(`${served.address}exercises/halo.html`);
    expect(complaints).toEqual([]);
    expect(served.missed).toEqual([]);
    const { address } = served;
    // A face is there at once, whatever else the host is waited for.
    const [face, style] = ['fonts/literata-400-latin.woff2', 'studio.css'];
    for (const name of [face, style]) served.silent.add(name);
    const first = await page.evaluate(
      ([faceAt, styleAt]) => {
        const link = document.createElement('link');
        Object.assign(link, { rel: 'stylesheet', href: styleAt });
        const styled = new Promise((done) => link.addEventListener('load', () => done('style')));
        document.head.append(link);
        return Promise.race([styled, new FontFace('late', `url("${faceAt}")`).load().then(() => 'face')]);
      },
      [address + face, address + style],
    );
    expect(first).toBe('face');
    await served.close();
    served = undefined;
    await page.goto(address);
    await page.fill('#look-for', 'tummy');
    await expect.poll(() => shownIn(page, '.found')).not.toEqual([]);
    await page.goto(`${address}by-kit.html`);
    expect(await page.locator('h1').textContent()).toBe('By kit');
    await page.goto(`${address}exercises/halo.html`);
    expect(await page.locator('h1').textContent()).toBe('Halo');
  });

  test('what keeps the library leaves alone whatever else lies below its address', async () => {
    const files = new Map(await filesOf());
    files.set('0123456789abcdef/index.html', new TextEncoder().encode('<!doctype html><title>Other</title>'));
    served = await serveFolder(files, UNDER);
    context = await holdPhone(browser);
    const page = await context.newPage();
    await page.goto(served.address);
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await page.goto(`${served.address}0123456789abcdef/index.html`);
    const kept = await page.evaluate(async () => {
      const names = await caches.keys();
      const keys = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
      return keys.flat().map(({ url }) => url);
    });
    expect(kept.length).toBeGreaterThan(5);
    expect(kept.filter((url) => url.includes('0123456789abcdef'))).toEqual([]);
  });
});

// A5 is 148 × 210 mm (ISO 216), 419.5 × 595.3 points.
/** The pages with most in them; all there are in `npm run verify:deep`. */
const MEASURED = 20;
/** The fullest cards alone. */
const PRINTED = 4;
/** What is left of A5 between the margins of a card, in CSS pixels. */
const CARD = { width: ((148 - 2 * 12) * 96) / 25.4, height: ((210 - 11 - 10) * 96) / 25.4 };

test(`the ${DEEP ? '' : `${MEASURED} `}exercises with most to say are one A5 card each on paper`, async () => {
  const page = await open('index.html');
  const heights = new Map<string, number>();
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width: Math.floor(CARD.width), height: 640 });
  const written = await Promise.all(
    library.exercises.map(async ({ id }) => [id, (await stat(join(folder, `exercises/${id}.html`))).size] as const),
  );
  const most = written.sort(([, a], [, b]) => b - a).slice(0, runs(MEASURED, written.length));
  for (const [id] of most) {
    await page.goto(fromDisk(`exercises/${id}.html`));
    // What stands lowest on it, which may stand below it.
    const height = await page.evaluate(async () => {
      await document.fonts.ready;
      return document.querySelector('.card')?.scrollHeight ?? 0;
    });
    heights.set(id, height);
  }
  const longest = [...heights].sort(([, a], [, b]) => b - a);
  expect(longest.filter(([, height]) => height > CARD.height || height < 100)).toEqual([]);
  // What was measured holds as it is printed.
  await page.emulateMedia({ media: null });
  const wrong: string[] = [];
  for (const [id] of longest.slice(0, PRINTED)) {
    await page.goto(fromDisk(`exercises/${id}.html`));
    const file = join(folder, `${id}.pdf`);
    await writeFile(file, await page.pdf({ preferCSSPageSize: true }));
    const told = spawnSync('pdfinfo', [file], { encoding: 'utf8' }).stdout;
    const pages = /Pages:\s+(\d+)/.exec(told)?.[1];
    const size = /Page size:\s+([\d.]+) x ([\d.]+)/.exec(told);
    const a5 = Math.abs(Number(size?.[1]) - 419.5) < 1 && Math.abs(Number(size?.[2]) - 595.3) < 1;
    if (pages !== '1' || !a5) wrong.push(`${id}: ${pages} pages of ${size?.[0]}`);
    await rm(file);
  }
  expect(wrong).toEqual([]);
});
