/**
 * Marks as Chromium keeps them: the process killed at any moment, two windows at once, no room, no storage at all, a
 * newer edition. What was said to be kept is there, once; what was not is not half there.
 */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { keepPage } from './keep-harness.js';
import { browserArguments, killBrowser, WHOLE_BROWSER } from './phone.js';
import { type Served, serveFolder } from './serve-folder.js';

let served: Served;
let profile: string;
let context: BrowserContext;

const open = (): Promise<BrowserContext> =>
  chromium.launchPersistentContext(profile, {
    executablePath: WHOLE_BROWSER,
    args: browserArguments,
  });

beforeAll(async () => {
  profile = await mkdtemp(join(tmpdir(), 'profile-'));
  const bytes = async (edition: number, id?: string): Promise<Uint8Array> =>
    new TextEncoder().encode(await keepPage(edition, id));
  const files = new Map([
    ['index.html', await bytes(1)],
    ['second.html', await bytes(2)],
    ['other.html', await bytes(1, 'f'.repeat(32))],
  ]);
  served = await serveFolder(files, '/keep/');
  context = await open();
});
afterAll(async () => {
  await context?.close();
  await served?.close();
  await rm(profile, { recursive: true, force: true });
});

async function pageAt(name = 'index.html'): Promise<Page> {
  const page = await context.newPage();
  await page.goto(served.address + name);
  await page.evaluate(() => window.kept.then(() => undefined));
  return page;
}

/** A page at an address of its own, so that what is done to its storage is done to no other's. */
async function apart(work: (page: Page, address: string) => Promise<void>): Promise<void> {
  const pages = { 'index.html': await keepPage(), 'empty.html': '<!doctype html><title>Empty</title>' };
  const files = Object.entries(pages).map(([name, html]) => [name, new TextEncoder().encode(html)] as const);
  const own = await serveFolder(new Map(files), '/keep/');
  const page = await context.newPage();
  await work(page, own.address);
  await page.close();
  await own.close();
}
const settled = (page: Page): Promise<void> => page.evaluate(() => window.kept.then(() => undefined));

/** One set marked, resolved when it is said to be kept. */
const mark = (page: Page, ordinal: number): Promise<boolean> =>
  page.evaluate(async (n) => {
    const { keep } = window;
    const event = {
      kind: 'set',
      key: `1/1/squat/both/work/${n}`,
      exercise: 'squat',
      tempo: 'normal',
      done: 'done',
      reps: 8,
      asPlanned: true,
    };
    const state = { ...(keep.kept().state as object), at: n };
    // Text of the page's own, so that no type of the house is needed here.
    return (keep.add as (marks: unknown, state: unknown) => Promise<boolean>)([event], state);
  }, ordinal);

const keysIn = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => window.keep.events().flatMap((event) => (event.kind === 'set' ? [event.key] : [])));
const seqsIn = (page: Page): Promise<readonly number[]> =>
  page.evaluate(() => window.keep.events().map(({ seq }) => seq));
const stateIn = (page: Page): Promise<unknown> => page.evaluate(() => window.keep.kept().state);
const numbered = (count: number): readonly string[] =>
  Array.from({ length: count }, (_, i) => `1/1/squat/both/work/${i + 1}`);

test('the browser killed after any mark: what was kept is there once, in order, and where one was left', async () => {
  for (let round = 1; round <= 4; round += 1) {
    const page = await pageAt();
    expect(await keysIn(page)).toEqual(numbered(2 * (round - 1)));
    expect(await mark(page, 2 * round - 1)).toBe(true);
    expect(await mark(page, 2 * round)).toBe(true);
    await killBrowser(profile, context);
    context = await open();
  }
  const page = await pageAt();
  expect(await keysIn(page)).toEqual(numbered(8));
  expect(await seqsIn(page)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
  expect(await stateIn(page)).toEqual({ at: 8 });
  await page.close();
});

test('two windows mark at once: no place is taken twice, and each sees what the other kept', async () => {
  const [one, other] = [await pageAt(), await pageAt()];
  const before = (await keysIn(one)).length;
  await Promise.all(Array.from({ length: 10 }, (_, i) => mark(i % 2 === 0 ? one : other, 100 + i)));
  await one.waitForFunction((count) => window.keep.events().length === count, before + 10);
  await other.waitForFunction((count) => window.keep.events().length === count, before + 10);
  const seqs = await seqsIn(one);
  expect(new Set(seqs).size).toBe(before + 10);
  expect(await seqsIn(other)).toEqual(seqs);
  expect(await one.evaluate(() => window.keep.device())).toBe(await other.evaluate(() => window.keep.device()));
  await one.close();
  await other.close();
});

test('a newer edition finds the marks of the older; another booklet of the same address none', async () => {
  const newer = await pageAt('second.html');
  expect((await keysIn(newer)).length).toBeGreaterThan(7);
  expect(await mark(newer, 200)).toBe(true);
  expect(await newer.evaluate(() => window.keep.events().at(-1)?.edition)).toBe(2);
  const other = await pageAt('other.html');
  expect(await keysIn(other)).toEqual([]);
  await newer.close();
  await other.close();
});

test('with no room left nothing is half kept, and it is said; with room again it goes on', async () => {
  // Of an address that is known the browser has already reckoned how much it may take.
  await apart(async (page, address) => {
    const session = await context.newCDPSession(page);
    const { origin } = new URL(address);
    await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 100_000 });
    await page.goto(address);
    await settled(page);
    expect(await mark(page, 1)).toBe(true);
    const before = await keysIn(page);
    const large = await page.evaluate(async () => {
      // Letters that no browser can press together.
      const text = Array.from({ length: 2_000_000 }, () => String.fromCharCode(33 + Math.random() * 90)).join('');
      const note = { kind: 'note', text };
      return (window.keep.add as (marks: unknown, state: unknown) => Promise<boolean>)([note, note], {});
    });
    expect(large).toBe(false);
    expect(await page.evaluate(() => window.keep.fault())).toBe('full');
    expect(await keysIn(page)).toEqual(before);
    await session.send('Storage.overrideQuotaForOrigin', { origin });
    // Whoever comes back after making room need not open the page again.
    await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
    await page.waitForFunction(() => window.keep.fault() === null);
    expect(await mark(page, 300)).toBe(true);
    expect(await keysIn(page)).toEqual([...before, '1/1/squat/both/work/300']);
  });
});

test('a browser without storage, or one that refuses it, is told at once and takes no mark', async () => {
  for (const how of ['none', 'refused']) {
    const page = await context.newPage();
    await page.addInitScript((kind) => {
      const refuse = {
        open: () => {
          throw new DOMException('no', 'SecurityError');
        },
      };
      Object.defineProperty(window, 'indexedDB', { value: kind === 'none' ? undefined : refuse });
    }, how);
    await page.goto(served.address);
    await page.evaluate(() => window.kept.then(() => undefined));
    expect(await page.evaluate(() => window.keep.fault())).toBe('no storage');
    expect(await mark(page, 1)).toBe(false);
    expect(await keysIn(page)).toEqual([]);
    await page.close();
  }
});

test('a store that the browser lets go of is opened again: no mark is refused, none is doubled', async () => {
  await apart(async (page, address) => {
    await page.goto(address);
    await settled(page);
    expect(await mark(page, 1)).toBe(true);
    // As some phones do with a page that was long in the background.
    await page.evaluate(() => {
      const begin = IDBDatabase.prototype.transaction;
      IDBDatabase.prototype.transaction = () => {
        IDBDatabase.prototype.transaction = begin;
        throw new DOMException('the connection is closing', 'InvalidStateError');
      };
    });
    expect(await mark(page, 2)).toBe(true);
    expect(await page.evaluate(() => window.keep.fault())).toBeNull();
    await page.reload();
    await settled(page);
    expect(await keysIn(page)).toEqual(numbered(2));
    expect(await seqsIn(page)).toEqual([1, 2]);
  });
});

test('a store emptied under an open page holds all again with the next mark', async () => {
  await apart(async (page, address) => {
    await page.goto(address);
    await settled(page);
    expect(await mark(page, 1)).toBe(true);
    expect(await mark(page, 2)).toBe(true);
    const device = await page.evaluate(() => window.keep.device());
    const session = await context.newCDPSession(page);
    const { origin } = new URL(address);
    await session.send('Storage.clearDataForOrigin', { origin, storageTypes: 'indexeddb' });
    expect(await mark(page, 3)).toBe(true);
    await page.reload();
    await settled(page);
    expect(await keysIn(page)).toEqual(numbered(3));
    expect(await seqsIn(page)).toEqual([1, 2, 3]);
    expect(await stateIn(page)).toEqual({ at: 3 });
    expect(await page.evaluate(() => window.keep.device())).toBe(device);
  });
});

test('a newer program in another window is let in, and the older says so and takes no mark', async () => {
  await apart(async (page, address) => {
    await page.goto(address);
    await settled(page);
    expect(await mark(page, 1)).toBe(true);
    const newer = await context.newPage();
    await newer.goto(`${address}empty.html`);
    await newer.evaluate(
      () =>
        new Promise<void>((done, fail) => {
          const opening = indexedDB.open('chalkleaf', 99);
          opening.onsuccess = () => done();
          opening.onerror = () => fail(opening.error);
        }),
    );
    expect(await page.evaluate(() => window.keep.fault())).toBe('held elsewhere');
    expect(await mark(page, 2)).toBe(false);
    await page.reload();
    await settled(page);
    expect(await page.evaluate(() => window.keep.fault())).toBe('held elsewhere');
    await newer.close();
  });
});

test('a store that answers late is used as soon as it does', async () => {
  await apart(async (page, address) => {
    await page.goto(address);
    await settled(page);
    expect(await mark(page, 1)).toBe(true);
    await page.clock.install();
    await page.addInitScript(() => {
      const { open } = IDBFactory.prototype;
      // Bound to the page's own name for it: the answer is held back until it is called.
      IDBFactory.prototype.open = function (...asked) {
        const opening = open.apply(this, asked);
        const listen = opening.addEventListener.bind(opening);
        opening.addEventListener = (type: string, told: EventListenerOrEventListenerObject) => {
          const late = (event: Event): void => {
            const tell = (): void => (typeof told === 'function' ? told.call(opening, event) : told.handleEvent(event));
            if (type !== 'success') tell();
            else Object.assign(window, { answer: tell });
          };
          listen(type, late);
        };
        return opening;
      };
    });
    await page.reload();
    await page.waitForFunction(() => 'answer' in window);
    await page.clock.runFor(4000);
    await settled(page);
    expect(await page.evaluate(() => window.keep.fault())).toBe('no storage');
    await page.evaluate(() => (window as unknown as { readonly answer: () => void }).answer());
    await page.waitForFunction(() => window.keep.fault() === null && window.keep.events().length === 1);
    expect(await mark(page, 2)).toBe(true);
    expect(await keysIn(page)).toEqual(numbered(2));
  });
});

test('moments are the phone’s own, with its offset', async () => {
  const page = await pageAt();
  const at = await page.evaluate(() => window.keep.events().at(-1)?.at ?? '');
  expect(at).toMatch(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}[+-]\d{2}:\d{2}$/);
  expect(Math.abs(Date.parse(at) - Date.now())).toBeLessThan(600_000);
  await page.close();
});
