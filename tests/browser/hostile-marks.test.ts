/**
 * What a phone has kept, with hostile strings in every field of it: marks, where the screen was left, and what is remembered
 * of the booklet. Nothing runs, and the screens still stand.
 */
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { webSources } from '../../src/app/web-sources.js';
import { newKey } from '../../src/publish/seal-booklet.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import { HOSTILE, inBundles } from '../publish/hostile-strings.js';
import { hostPages, readPages } from '../publish/hostile-studio.js';
import { filesOf, type Made } from './every-page.js';
import { openBrowser } from './phone.js';
import { type Served, serveFolder } from './serve-folder.js';
import { openSnare, type Snare } from './snare.js';
import { kindOf, nextTap, toTraining } from './train-page.js';

const LONGEST = 4000;
const BUNDLES = 5;
const bundles = inBundles(
  HOSTILE.filter((text) => text.length < LONGEST),
  BUNDLES,
);

let browser: Browser;
let context: BrowserContext;
let served: Served;
let made: Made;
let snare: Snare;
const broken: string[] = [];

beforeAll(async () => {
  browser = await openBrowser();
  made = await filesOf(readPages(hostPages()).value, await prepareShell(webSources()), newKey());
  served = await serveFolder(made.files, '/s/');
  context = await browser.newContext({ bypassCSP: true });
  snare = await openSnare(context, served.address);
  snare.page.on('pageerror', (fault) => broken.push(fault.message));
  await snare.page.clock.install({ time: new Date(`${made.starts}T18:00:00`) });
});
afterAll(async () => {
  await context?.close();
  await served?.close();
  await browser?.close();
});

/** Every text in it, as the way to it. */
function textsIn(value: unknown, way: readonly string[] = []): readonly (readonly string[])[] {
  if (typeof value === 'string') return [way];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, one]) => textsIn(one, [...way, key]));
}

function withText(value: unknown, way: readonly string[], text: string): unknown {
  const copy: unknown = structuredClone(value);
  let at: unknown = copy;
  for (const step of way.slice(0, -1)) at = Reflect.get(Object(at), step);
  Reflect.set(Object(at), way.at(-1) ?? '', text);
  return copy;
}

interface Row {
  readonly id: string;
  readonly book: string;
  readonly event: unknown;
}

/** What the phone has kept, as it stands in its store. */
const rowsOf = (page: Page): Promise<readonly Row[]> =>
  page.evaluate(async () => {
    const store = await window.storeOf('readonly');
    return new Promise<Row[]>((done) => {
      const asked = store.objectStore('marks').getAll();
      asked.onsuccess = () => done(asked.result);
    });
  });

/** Writes over it, and lets the page know as another window would. */
const write = (page: Page, rows: readonly Row[], kept: Readonly<Record<string, unknown>> = {}): Promise<void> =>
  page.evaluate(
    async ([marks, records]) => {
      const store = await window.storeOf('readwrite');
      for (const mark of marks) store.objectStore('marks').put(mark);
      for (const [key, record] of Object.entries(records)) store.objectStore('kept').put(record, key);
      await new Promise((done) => {
        store.oncomplete = done;
      });
      document.dispatchEvent(new Event('visibilitychange', { bubbles: true }));
      // What the page asks of its store now is answered before this.
      const after = await window.storeOf('readwrite');
      await new Promise((done) => {
        after.oncomplete = done;
      });
    },
    [rows, kept] as const,
  );

declare global {
  interface Window {
    storeOf: (mode: IDBTransactionMode) => Promise<IDBTransaction>;
  }
}

/** Runs in the page. */
function lendStore(): void {
  window.storeOf = async (mode) => {
    const opened = await new Promise<IDBDatabase>((done, fail) => {
      const opening = indexedDB.open('chalkleaf');
      opening.onerror = () => fail(opening.error);
      opening.onsuccess = () => done(opening.result);
    });
    const transaction = opened.transaction(['marks', 'kept'], mode);
    transaction.addEventListener('complete', () => opened.close());
    return transaction;
  };
}

async function open(): Promise<Page> {
  const { page } = snare;
  // Another page first: with the same address nothing would be read anew.
  await page.goto(`${served.address}404.html`);
  await page.goto(`${served.address}booklet.html#now`);
  await toTraining(page);
  return page;
}

/** What tells one screen from the next, whatever its clock shows. */
const screenOn = (page: Page): Promise<string> =>
  page.evaluate(() =>
    ['.training-sheet', 'h2', '#training-main', '.heard']
      .map((one) => document.querySelector(`#training ${one}`))
      .map((one) => `${one?.className} ${one?.textContent?.replaceAll(/\d+:\d+/g, '')}`)
      .join(),
  );

/** Waits until the screen is another: what is tapped next stands on it. */
async function tap(page: Page, selector: string): Promise<void> {
  const before = await screenOn(page);
  await page.locator(selector).first().click({ timeout: 5000 });
  await expect.poll(() => screenOn(page), { timeout: 10_000 }).not.toBe(before);
  await page.clock.runFor(90_000);
}

/** Nothing ran, nothing broke, and there is a screen. */
async function expectToStand(page: Page, where: string): Promise<void> {
  await snare.look(where);
  const said = await page.locator('#training .training-sheet').textContent();
  expect([where, said === null || said === '', broken.splice(0), snare.strikes]).toEqual([where, false, [], []]);
}

test('marks: on each screen, whatever stands in any field of them', async () => {
  const page = await open();
  await page.evaluate(lendStore);
  for (let taps = 0; taps < 40 && (await kindOf(page)) !== 'finished'; taps += 1) {
    await tap(page, nextTap(await kindOf(page)));
  }
  const own = await rowsOf(page);
  const [first] = own;
  expect(own.length).toBeGreaterThan(5);
  const more = [
    { kind: 'note', text: 'Fine.' },
    { kind: 'pain', occurrence: 1, row: 'chair-squat', report: { where: 'knee', degree: 2, side: 'left' } },
    { kind: 'void', event: '7c9e6679-7425-40de-944b-0000000000ff' },
  ].map((event, at): Row => {
    const id = `7c9e6679-7425-40de-944b-00000000000${at}`;
    const head = { id, seq: 500 + at, edition: 1, at: `${made.starts}T19:00:00+00:00` };
    return { id, book: first?.book ?? '', event: { ...head, ...event } };
  });
  const rows = [...own, ...more];
  const ways = new Set(rows.flatMap(({ event }) => textsIn(event).map((way) => way.join('/'))));
  ways.delete('id');
  expect([...ways]).toEqual(
    expect.arrayContaining(['kind', 'at', 'key', 'load/label', 'report/where', 'text', 'event']),
  );
  const attack = async (where: string): Promise<void> => {
    for (const way of ways) {
      const steps = way.split('/');
      const hostile = rows.map(({ event, ...row }, at) => ({
        ...row,
        event: Reflect.has(Object(event), steps[0] ?? '') ? withText(event, steps, bundles[at % BUNDLES] ?? '') : event,
      }));
      await write(page, hostile);
      await expectToStand(page, `${where}: ${way}`);
    }
    await write(page, rows);
  };
  const met: string[] = [];
  await attack('finished');
  await tap(page, '#training-main');
  await attack(await kindOf(page));
  await open();
  await page.evaluate(lendStore);
  for (let taps = 0; taps < 12 && !met.includes('set resting'); taps += 1) {
    const kind = await kindOf(page);
    if (!met.includes(kind)) await attack(kind);
    met.push(kind);
    if (kind === 'set') {
      // What was lifted last time stands here, whatever it is called.
      const lifted = withLabels(rows, bundles[0] ?? '');
      await write(page, lifted);
      await expectToStand(page, 'last time');
      expect(await page.locator('#training').textContent()).toContain('struck(1)');
      await write(page, rows);
    }
    await tap(page, nextTap(kind));
  }
  expect(met).toEqual(expect.arrayContaining(['home', 'set', 'set resting']));
});

const withLabels = (rows: readonly Row[], label: string): readonly Row[] =>
  rows.map(({ event, ...row }) => ({
    ...row,
    event: Reflect.has(Object(event), 'load') ? withText(event, ['load', 'label'], label) : event,
  }));

const VIEWS = ['home', 'today', 'less', 'training', 'different', 'easier', 'pain', 'finished', 'send', 'this phone'];

test('where the screen was left, what is set, and what this phone is called', async () => {
  const page = await open();
  await page.evaluate(lendStore);
  const [row] = await rowsOf(page);
  const book = row?.book ?? '';
  for (const [at, view] of VIEWS.entries()) {
    const hostile = bundles[at % BUNDLES] ?? '';
    const began = {
      key: hostile,
      row: hostile,
      after: hostile,
      seconds: 5,
      began: Date.parse(`${made.starts}T18:00:00`),
    };
    const state = {
      view,
      how: at % 2 === 0 ? 'as planned' : 'short',
      occurrence: 2,
      inHand: began,
      clock: began,
      rested: began,
      longer: began,
      easier: { [hostile]: 1 },
      passedBy: [hostile],
      more: [hostile],
      different: hostile,
      pain: { row: hostile, sign: hostile, none: at % 2 === 0, where: hostile, side: hostile, degree: 5 },
    };
    const settings = { units: hostile, leftHand: hostile };
    const record = { state, settings, seenEdition: 1, passedAt: null };
    await write(page, [], { [book]: record, '': hostile });
    await open();
    await page.evaluate(lendStore);
    await expectToStand(page, view);
  }
});
