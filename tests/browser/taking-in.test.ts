/** The client's part of a hosted booklet as it comes into the page: leaf by leaf, whole, and never another leaf than asked for. */
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { webSources } from '../../src/app/web-sources.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import { renderBookletFolder } from '../../src/web/render-booklet.js';
import { fixtureBooklet } from '../fixtures/booklet.js';
import { fixturePlan } from '../web/plan-fixture.js';
import { holdPhone, openBrowser } from './phone.js';
import { type Served, serveFolder } from './serve-folder.js';

let browser: Browser;
let files: ReadonlyMap<string, Uint8Array>;
let served: Served;
let context: BrowserContext;

beforeAll(async () => {
  const parts = await prepareShell(webSources());
  const made = await renderBookletFolder(fixtureBooklet, clientPlanOf(fixturePlan), parts);
  files = new Map(made.map(({ path, bytes }) => [path, bytes]));
  served = await serveFolder(files, '/b/');
  browser = await openBrowser();
});
afterEach(() => context?.close());
afterAll(async () => {
  await browser?.close();
  await served?.close();
});

const payload = (): string => new TextDecoder().decode(files.get('payload.html'));

/** `before` runs in the page before anything of it does. */
async function opened(hash: string, before: () => void): Promise<Page> {
  context = await holdPhone(browser);
  const page = await context.newPage();
  await page.addInitScript(before);
  await page.goto(served.address + hash);
  await page.waitForSelector('.book.ready', { state: 'attached' });
  return page;
}

const visible = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => [...document.querySelectorAll('.leaf:not([hidden])')].map(({ id }) => id));

test('all that stands in the client’s part comes in, as it stands there', async () => {
  const page = await opened('', () => undefined);
  const [taken, whole] = await page.evaluate(async () => {
    const text = await (await fetch('payload.html')).text();
    const apart = new DOMParser().parseFromString(text, 'text/html');
    const of = (book: Element | null): string[] =>
      [...(book?.children ?? [])].map((one) => {
        const copy = one.cloneNode(true);
        if (!(copy instanceof Element)) return '';
        for (const put of [copy, ...copy.querySelectorAll('.on.way-in')]) {
          if (put.matches('.way-in')) put.remove();
          if (put.matches('.leaf')) put.removeAttribute('hidden');
        }
        return copy.outerHTML;
      });
    const data = (from: Document): string => from.querySelector('.book ~ #plan')?.textContent ?? '';
    return [
      [...of(document.querySelector('.book')), data(document)],
      [...of(apart.querySelector('.book')), data(apart)],
    ];
  });
  expect(whole?.length).toBeGreaterThan(10);
  expect(taken).toEqual(whole);
});

test('it comes in pieces, between which the page can answer', async () => {
  const page = await opened('', () => {
    // A phone on which everything takes long.
    let now = 0;
    performance.now = () => {
      now += 20;
      return now;
    };
    const seen = new Set<number>();
    Object.assign(window, { seen });
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      seen.add(document.querySelectorAll('.leaf').length);
      if (document.querySelector('.book.ready') === null) port2.postMessage(null);
    };
    port2.postMessage(null);
  });
  const seen = await page.evaluate(() => 'seen' in window && window.seen instanceof Set && window.seen.size);
  expect(seen).toBeGreaterThan(10);
});

test('whoever comes for a leaf sees that one and never another on the way', async () => {
  const page = await opened('#week-2', () => {
    const shown: string[] = [];
    Object.assign(window, { shown });
    const look = (): void => {
      for (const leaf of document.querySelectorAll('.leaf:not([hidden])')) {
        if (leaf.checkVisibility() && !shown.includes(leaf.id)) shown.push(leaf.id);
      }
      requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  });
  await page.waitForFunction(() => 'shown' in window && Array.isArray(window.shown) && window.shown.length > 0);
  expect(await visible(page)).toEqual(['week-2']);
  expect(await page.evaluate(() => 'shown' in window && window.shown)).toEqual(['week-2']);
});

test('whoever turns while it comes in is taken there, and hears it', async () => {
  const page = await opened('', () => {
    new MutationObserver((_, watching) => {
      if (document.querySelector('.leaf.cover') === null) return;
      watching.disconnect();
      location.hash = '#safety';
    }).observe(document, { subtree: true, childList: true });
  });
  expect(await visible(page)).toEqual(['safety']);
  expect(await page.evaluate(() => document.activeElement?.closest('.leaf')?.id)).toBe('safety');
});

test('what a browser finds in a leaf that is put away is turned to', async () => {
  const page = await opened('', () => undefined);
  await page.evaluate(() => {
    document.querySelector('#week-2 h2')?.dispatchEvent(new Event('beforematch', { bubbles: true }));
  });
  await page.waitForFunction(() => location.hash === '#week-2');
  await expect.poll(() => visible(page)).toEqual(['week-2']);
});

test('the client’s part is read as it comes, no more than 64 KB in one go, and no letter is lost between two', async () => {
  // Of three bytes each, so that a piece ends within one.
  const letters = '’'.repeat(70_000);
  const large = new Map(files).set('payload.html', Buffer.from(`${payload()}<!--${letters}-->`));
  const slow = await serveFolder(large, '/b/');
  context = await holdPhone(browser);
  const page = await context.newPage();
  await page.addInitScript(() => {
    const pieces: number[] = [];
    let turns = 0;
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      turns += 1;
      if (document.querySelector('.leaf') === null) port2.postMessage(null);
    };
    port2.postMessage(null);
    const after: number[] = [];
    const { decode } = TextDecoder.prototype;
    TextDecoder.prototype.decode = function (bytes, options) {
      if (bytes !== undefined) {
        pieces.push(bytes.byteLength);
        after.push(turns);
      }
      return decode.call(this, bytes, options);
    };
    // Where it begins is sought in all of it.
    const { includes } = String.prototype;
    String.prototype.includes = function (this: string, part: string, from?: number) {
      if (this.length > 70_000 && !('whole' in window)) Object.assign(window, { whole: String(this) });
      return includes.call(this, part, from);
    };
    Object.assign(window, { pieces, after });
  });
  await page.goto(slow.address);
  await page.waitForSelector('.book.ready', { state: 'attached' });
  const told = await page.evaluate(async () => {
    const { pieces, after, whole } = window as unknown as { pieces: number[]; after: number[]; whole: string };
    return { pieces, after, same: whole === (await (await fetch('payload.html')).text()) };
  });
  await slow.close();
  expect(told.pieces.length).toBeGreaterThan(3);
  expect(Math.max(...told.pieces)).toBeLessThanOrEqual(65_536);
  // Between two of them something else had its turn.
  expect(new Set(told.after).size).toBe(told.after.length);
  expect(told.same).toBe(true);
});

test('what the cover lists is laid out in two frames, after what stands above it', async () => {
  const page = await opened('', () => {
    const rows: string[] = [];
    Object.assign(window, { rows });
    const look = (): void => {
      const list = document.querySelector('.leaf.cover .index');
      const shown = [...(list?.querySelectorAll('span:first-child') ?? [])].filter((one) =>
        one.checkVisibility(),
      ).length;
      const now = list === null ? '' : `${shown} of ${list.children.length}`;
      if (now !== '' && rows.at(-1) !== now) rows.push(now);
      requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  });
  await page.waitForFunction(() => !document.querySelector('.book')?.matches('.arriving, .arriving-on'));
  const rows = await page.evaluate(async () => {
    await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
    return 'rows' in window && Array.isArray(window.rows) ? window.rows : [];
  });
  const all = Number(String(rows[0]).split(' ').at(-1));
  expect(all).toBeGreaterThan(11);
  expect(rows).toEqual([`0 of ${all}`, `11 of ${all}`, `${all} of ${all}`]);
});
