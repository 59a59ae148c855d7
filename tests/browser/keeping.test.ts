/**
 * Marks as Chromium keeps them: the process killed at any moment, two windows at once, no room, no storage at all, a
 * newer edition. What was said to be kept is there, once; what was not is not half there.
 */
import { spawnSync } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { keepPage } from './keep-harness.js';
import { browserArguments } from './phone.js';
import { type Served, serveFolder } from './serve-folder.js';

let served: Served;
let profile: string;
let context: BrowserContext;

const open = (): Promise<BrowserContext> =>
  chromium.launchPersistentContext(profile, {
    executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
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
    spawnSync('pkill', ['-9', '-f', profile]);
    await context.close().catch(() => undefined);
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
  // An address of its own: of one that is known the browser has already reckoned how much it may take.
  const apart = await serveFolder(new Map([['index.html', new TextEncoder().encode(await keepPage())]]), '/keep/');
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  const { origin } = new URL(apart.address);
  await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 100_000 });
  await page.goto(apart.address);
  await page.evaluate(() => window.kept.then(() => undefined));
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
  expect(await mark(page, 300)).toBe(true);
  expect(await page.evaluate(() => window.keep.fault())).toBeNull();
  await page.close();
  await apart.close();
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

test('moments are the phone’s own, with its offset', async () => {
  const page = await pageAt();
  const at = await page.evaluate(() => window.keep.events().at(-1)?.at ?? '');
  expect(at).toMatch(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}[+-]\d{2}:\d{2}$/);
  expect(Math.abs(Date.parse(at) - Date.now())).toBeLessThan(600_000);
  await page.close();
});
