/**
 * What a client sees of keeping: a new edition says what it changes and that the marks stay; a phone that cannot keep, or
 * has no room left, says so plainly and shows no stroke that is not there.
 */
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { webSources } from '../../src/app/web-sources.js';
import type { Booklet, Notice } from '../../src/model/booklet.js';
import { bookletId } from '../../src/model/identity.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import { renderBookletFolder } from '../../src/web/render-booklet.js';
import { englishPhone as WORDS } from '../../src/words/english-phone.js';
import { holdPhone, openBrowser } from './phone.js';
import { type Served, serveFolder } from './serve-folder.js';
import { BOOKLET, eventsIn, type Issued, issuedFor, kindOf, nextTap, tap } from './train-page.js';

const START = new Date('2027-01-04T18:00:00');
const CHANGES: Notice = {
  kind: 'changes',
  title: 'Edition 2, 6 January 2027',
  lines: ['One line that this edition changes.'],
};

let browser: Browser;
let context: BrowserContext;
let served: Served;
let issued: Issued;
let first: ReadonlyMap<string, Uint8Array>;
let second: ReadonlyMap<string, Uint8Array>;
let files: Map<string, Uint8Array>;

const withNotice = (booklet: Booklet): Booklet => ({
  ...booklet,
  parts: booklet.parts.map((part) => (part.kind === 'cover' ? { ...part, notice: CHANGES } : part)),
});

beforeAll(async () => {
  issued = await issuedFor('rowan-ashby');
  const parts = await prepareShell(webSources());
  const newer = clientPlanOf({ ...issued.plan, edition: 2 }, { bookletId: bookletId(BOOKLET), standing: 'stands' });
  const byName = (all: Awaited<ReturnType<typeof renderBookletFolder>>): ReadonlyMap<string, Uint8Array> =>
    new Map(all.map(({ path, bytes }) => [path, bytes]));
  first = byName(await renderBookletFolder(issued.booklet, issued.sent, parts));
  second = byName(await renderBookletFolder(withNotice(issued.booklet), newer, parts));
  browser = await openBrowser();
});
afterEach(async () => {
  await context?.close();
  await served?.close();
});
afterAll(() => browser?.close());

async function opened(): Promise<Page> {
  files = new Map(first);
  served = await serveFolder(files, '/b/');
  context = await holdPhone(browser);
  const page = await context.newPage();
  await page.clock.install({ time: START });
  await page.goto(`${served.address}#now`);
  await stands(page);
  return page;
}

const stands = async (page: Page): Promise<void> => {
  await page.waitForSelector('#training .training-sheet', { state: 'visible' });
};
const said = (page: Page): Promise<string> =>
  page.evaluate(() => document.querySelector('#training')?.textContent?.replaceAll(/\s+/g, ' ') ?? '');

/** Sets of work, as they lie in the store. */
const marked = async (page: Page): Promise<readonly string[]> =>
  (await eventsIn(page)).flatMap(({ kind, key }) => (kind === 'set' && key?.includes('/work/') === true ? [key] : []));

/** As far as so many sets of work marked. */
async function mark(page: Page, sets: number): Promise<void> {
  for (let taps = 0; taps < 40 && (await marked(page)).length < sets; taps += 1) {
    await tap(page, nextTap(await kindOf(page)));
  }
  expect(await marked(page)).toHaveLength(sets);
}

test('a new edition says what it changes and that the marks stay, and they do', async () => {
  const page = await opened();
  await mark(page, 2);
  const before = await marked(page);
  files.set('payload.html', second.get('payload.html') ?? expect.fail());
  await page.reload();
  await stands(page);
  expect(await kindOf(page)).toBe('home');
  const words = await said(page);
  for (const line of [...WORDS.newEdition(2), ...CHANGES.lines]) expect(words).toContain(line);
  expect(await marked(page)).toEqual(before);
  // Gone on with where one was, and told once.
  await mark(page, 3);
  expect((await marked(page)).slice(0, 2)).toEqual(before);
  await page.reload();
  await stands(page);
  expect(await said(page)).not.toContain(WORDS.newEdition(2)[0]);
});

test('a browser that keeps nothing says so, offers no session, and the booklet reads on', async () => {
  files = new Map(first);
  served = await serveFolder(files, '/b/');
  context = await holdPhone(browser);
  const page = await context.newPage();
  await page.addInitScript(() => Object.defineProperty(window, 'indexedDB', { value: undefined }));
  await page.goto(`${served.address}#now`);
  await stands(page);
  const words = await said(page);
  for (const line of WORDS.cannotKeep['no storage']) expect(words).toContain(line);
  expect(await page.locator('#training-main').count()).toBe(0);
  await page.locator('#training a.tap').first().tap();
  await page.waitForSelector('#cover', { state: 'visible' });
});

test('with no room left no stroke is shown that is not there; with room again one goes on', async () => {
  const page = await opened();
  await mark(page, 1);
  await page.evaluate(() => {
    const { add } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.add = () => {
      throw new DOMException('no room', 'QuotaExceededError');
    };
    addEventListener('room', () => {
      IDBObjectStore.prototype.add = add;
    });
  });
  const before = await marked(page);
  for (let taps = 0; taps < 10 && !(await kindOf(page)).startsWith('home'); taps += 1) {
    await tap(page, nextTap(await kindOf(page)));
  }
  expect(await kindOf(page)).toMatch(/^home/);
  expect(await page.locator('#training-main').count()).toBe(0);
  for (const line of WORDS.cannotKeep.full) expect(await said(page)).toContain(line);
  expect(await marked(page)).toEqual(before);
  await page.evaluate(() => {
    dispatchEvent(new Event('room'));
    document.dispatchEvent(new Event('visibilitychange'));
  });
  await page.waitForSelector('#training-main');
  expect(await said(page)).not.toContain(WORDS.cannotKeep.full[0]);
  await mark(page, 2);
  expect(new Set(await marked(page)).size).toBe(2);
});
