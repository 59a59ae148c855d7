/** A hosted booklet under a sub-path: opened again without a network, and with a new edition or a new program. */
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { webSources } from '../../src/app/web-sources.js';
import type { Booklet } from '../../src/model/booklet.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import { renderBookletFolder } from '../../src/web/render-booklet.js';
import type { ShellParts } from '../../src/web/shell-parts.js';
import { fixtureBooklet } from '../fixtures/booklet.js';
import { fixturePlan } from '../web/plan-fixture.js';
import { holdPhone, listenTo, openBrowser } from './phone.js';
import { type Host, type Served, serveFolder } from './serve-folder.js';

const UNDER = '/studio/booklets/7f3a/';
const plan = clientPlanOf(fixturePlan);
let parts: ShellParts;
let browser: Browser;
let context: BrowserContext;
let served: Served;
let files: Map<string, Uint8Array>;

async function folderOf(booklet: Booklet, own: ShellParts = parts): Promise<Map<string, Uint8Array>> {
  const all = await renderBookletFolder(booklet, plan, own);
  return new Map(all.map(({ path, bytes }) => [path, bytes]));
}

beforeAll(async () => {
  parts = await prepareShell(webSources());
  browser = await openBrowser();
});
afterEach(async () => {
  await context?.close();
  await served?.close();
});
afterAll(() => browser?.close());

/** Opened once with a network, until what it takes to open it without one is put away. */
async function opened(host: Host = {}): Promise<Page> {
  files = await folderOf(fixtureBooklet);
  served = await serveFolder(files, UNDER, host);
  context = await holdPhone(browser);
  const page = await context.newPage();
  await page.goto(served.address);
  await page.waitForSelector('.book.ready');
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  return page;
}

/** With its leaves, and in its own faces: they come once the page has been laid out. */
async function isWhole(page: Page): Promise<void> {
  await page.waitForSelector('.book.ready h2', { state: 'attached' });
  await page.waitForFunction(
    () =>
      [...document.fonts].filter(({ status }) => status === 'loaded').length >= 2 && document.fonts.status === 'loaded',
  );
}

test('the second opening needs no network and no server, whatever stands behind the question mark', async () => {
  const page = await opened();
  await served.close();
  await context.setOffline(true);
  for (const address of ['', 'index.html', '?from=home', '#week-2']) {
    await page.goto('about:blank');
    await page.goto(served.address + address);
    await isWhole(page);
  }
  await page.waitForSelector('#training', { state: 'attached' });
});

test('nor does it where the host leads on from each name to another', async () => {
  const page = await opened({ leadsOn: true });
  await served.close();
  await context.setOffline(true);
  for (const address of ['', 'index.html']) {
    await page.goto('about:blank');
    await page.goto(served.address + address);
    await page.waitForSelector('.book.ready');
  }
});

test('where a network is there and answers nothing, what came last stands in a while', async () => {
  const page = await opened();
  served.silent.add('payload.html');
  await page.reload({ waitUntil: 'commit' });
  await isWhole(page);
});

test('nothing is asked of anybody else, nothing is missing, and no rule of the page is broken', async () => {
  files = await folderOf(fixtureBooklet);
  served = await serveFolder(files, UNDER);
  context = await holdPhone(browser);
  const page = await context.newPage();
  const heard = listenTo(page);
  await page.goto(served.address);
  await page.waitForSelector('#training', { state: 'attached' });
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  expect(heard.requests.filter((url) => !url.startsWith(served.address))).toEqual([]);
  expect(heard.complaints).toEqual([]);
  expect(served.missed).toEqual([]);
});

test('what plans again is not fetched where nothing is planned again', async () => {
  const page = await opened();
  const kept = await page.evaluate(async () => {
    const [only = ''] = await caches.keys();
    return (await (await caches.open(only)).keys()).map(({ url }) => url.split('/').at(-1));
  });
  expect(kept).toContain('training.js');
  expect(kept).not.toContain('plan-again.js');
});

test('a new edition arrives by itself, and without a network the latest one that came', async () => {
  const page = await opened();
  const newer = await folderOf({ ...fixtureBooklet, title: 'The second edition' });
  files.set('payload.html', newer.get('payload.html') ?? new Uint8Array());
  await page.reload();
  await page.waitForFunction(() => document.title.includes('The second edition'));
  await context.setOffline(true);
  await page.reload();
  await page.waitForFunction(() => document.title.includes('The second edition'));
});

test('a page left open takes a new edition in when one comes back to it', async () => {
  files = await folderOf(fixtureBooklet);
  served = await serveFolder(files, UNDER);
  context = await holdPhone(browser);
  const page = await context.newPage();
  await page.clock.install();
  await page.goto(served.address);
  await page.waitForSelector('.book.ready');
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url().slice(served.address.length)));
  const back = (): Promise<void> =>
    page.evaluate(() => {
      document.dispatchEvent(new Event('visibilitychange'));
    });
  await back();
  expect(asked).not.toContain('payload.html');
  await page.clock.fastForward(3_600_000);
  const looked = page.waitForResponse(/payload\.html$/);
  await back();
  await (await looked).finished();
  expect(asked).not.toContain('');
  const newer = await folderOf({ ...fixtureBooklet, title: 'The second edition' });
  files.set('payload.html', newer.get('payload.html') ?? new Uint8Array());
  await page.clock.fastForward(3_600_000);
  await back();
  await page.waitForFunction(() => document.title.includes('The second edition'));
});

test('a new program takes the place of the older one, and of its files nothing stays', async () => {
  const page = await opened();
  const changed = await folderOf(fixtureBooklet, {
    ...parts,
    training: { ...parts.training, en: { ...parts.training.en, text: `${parts.training.en.text};` } },
  });
  for (const [path, bytes] of changed) files.set(path, bytes);
  await page.evaluate(() => navigator.serviceWorker.ready.then((found) => found.update()));
  const length = parts.training.en.text.length + 1;
  await page.waitForFunction(async (wanted) => {
    const [only, other] = await caches.keys();
    if (only === undefined || other !== undefined) return false;
    const script = await (await caches.open(only)).match(new URL('training.js', location.href).href);
    return (await script?.text())?.length === wanted;
  }, length);
});

test('what it is called on a home screen is the same of every client', async () => {
  files = await folderOf(fixtureBooklet);
  const manifest = JSON.parse(new TextDecoder().decode(files.get('manifest.webmanifest')));
  expect(manifest).toMatchObject({ start_url: './', scope: './', display: 'standalone' });
  for (const { src, sizes } of manifest.icons) {
    const bytes = files.get(src) ?? expect.fail(src);
    if (!src.endsWith('.png')) continue;
    // Width and height of a PNG stand in its first chunk (ISO/IEC 15948, 11.2.2).
    const view = new DataView(bytes.buffer, bytes.byteOffset);
    expect(`${view.getUint32(16)}x${view.getUint32(20)}`).toBe(sizes);
  }
});
