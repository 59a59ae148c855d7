/** A sealed booklet in a browser: as a stranger, with the link, with words, with wrong ones, forgotten, and without a network. */
import { readFileSync } from 'node:fs';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { webSources } from '../../src/app/web-sources.js';
import { bookletId } from '../../src/model/identity.js';
import { BESIDE, type SealedBooklet } from '../../src/model/sealed.js';
import type { Lock } from '../../src/model/state.js';
import { makePair } from '../../src/publish/key-pair.js';
import { closeLock, newKey, sealPart, writeLink } from '../../src/publish/seal-booklet.js';
import { FORM } from '../../src/publish/seal-envelope.js';
import { openMarks, type PrivateKey } from '../../src/publish/seal-marks.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import { renderBookletFolder } from '../../src/web/render-booklet.js';
import { renderSealed } from '../../src/web/render-sealed.js';
import { fixtureBooklet } from '../fixtures/booklet.js';
import { besideEnvelopes } from '../publish/envelope-letters.js';
import { fixturePlan } from '../web/plan-fixture.js';
import { axeFaults } from './axe.js';
import { holdPhone, listenTo, openBrowser } from './phone.js';
import { type Served, serveFolder } from './serve-folder.js';

const UNDER = '/studio/0123456789abcdef0123456789abcdef/';
const SIX = 'maple kettle orbit paper lemon bridge';
const PAPER = new TextEncoder().encode('%PDF-1.7 as it was drawn');
const BOOK = bookletId('00112233445566778899aabbccddeeff');

let browser: Browser;
let pair: PrivateKey;
let plain: Map<string, Uint8Array>;
const [key, link] = [newKey(), newKey()];
let byLink: Lock;
let byWords: Lock;
let byBoth: Lock;

beforeAll(async () => {
  browser = await openBrowser();
  pair = await makePair();
  const { crv, x, y } = pair;
  const plan = clientPlanOf(fixturePlan, { bookletId: BOOK, standing: 'stands', marksTo: { crv, x, y } });
  const files = await renderBookletFolder(fixtureBooklet, plan, await prepareShell(webSources()));
  plain = new Map(files.map(({ path, bytes }) => [path, bytes]));
  byLink = await closeLock({ by: 'link', key, link: key });
  byWords = await closeLock({ by: 'words', key, words: SIX });
  byBoth = await closeLock({ by: 'both', key, link, words: SIX });
});
afterAll(() => browser?.close());

let context: BrowserContext;
let served: Served;
let files: Map<string, Uint8Array>;
afterEach(async () => {
  await context?.close();
  await served?.close();
});

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);

async function sealedPart(lock: Lock): Promise<SealedBooklet> {
  const booklet = await sealPart(plain.get('payload.html') ?? expect.fail('no payload'), 'booklet', lock.key);
  return {
    form: FORM,
    by: lock.by,
    booklet,
    beside: ['paper'],
    ...(lock.closed === undefined ? {} : { lock: lock.closed }),
  };
}

async function serve(lock: Lock, change: (sealed: SealedBooklet) => SealedBooklet = (sealed) => sealed): Promise<void> {
  files = new Map(plain);
  files.set('payload.html', renderSealed(change(await sealedPart(lock)), fixtureBooklet.language));
  files.set(BESIDE.paper.file, utf8(await sealPart(PAPER, 'paper', lock.key)));
  served = await serveFolder(files, UNDER);
  context = await holdPhone(browser);
}

async function visit(address = served.address): Promise<Page> {
  const page = await context.newPage();
  await page.goto(address);
  return page;
}

const isOpen = (page: Page) => page.waitForSelector('.book.ready');
const said = (page: Page) => page.locator('.said:not(:empty)').textContent();
/** Words of the booklet, read or not. */
const OF_THE_BOOKLET = /goblet|squat|16\u00a0?kg/i;
const nothingShown = async (page: Page): Promise<void> => {
  expect(await page.locator('.book').count()).toBe(0);
  expect(besideEnvelopes(await page.content())).not.toMatch(OF_THE_BOOKLET);
};
const kept = '.opening [value=kept]';
const once = '.opening [value=once]';

test('what is looked for does stand in an open booklet', async () => {
  await serve(byLink);
  const page = await visit(writeLink(served.address, key));
  await page.locator(once).click();
  await isOpen(page);
  expect(besideEnvelopes(await page.content())).toMatch(OF_THE_BOOKLET);
});

describe('a stranger', () => {
  test.each([
    ['by link', () => byLink],
    ['by words', () => byWords],
    ['by both', () => byBoth],
  ])('%s: sees that it is sealed, and not a word of it', async (_, lock) => {
    await serve(lock());
    const page = await visit();
    const heard = listenTo(page);
    await page.waitForSelector('.opening form:not([hidden])');
    await nothingShown(page);
    await page.locator(once).click();
    expect(await said(page)).toMatch(
      lock().by === 'words' ? /These words do not open it/ : /This link does not open it/,
    );
    await nothingShown(page);
    expect(heard.complaints).toEqual([]);
    for (const bytes of files.values())
      expect(Buffer.from(bytes).toString('latin1')).not.toContain(fixtureBooklet.title);
  });

  test('without script: told what it is, and how to come by it on paper', async () => {
    await serve(byLink);
    await context.close();
    context = await holdPhone(browser, { javaScript: false });
    const page = await visit();
    await page.locator('a.main').click();
    await page.waitForURL(/payload\.html$/);
    expect(await page.locator('.unopened').textContent()).toContain('ask your coach for it on paper');
    await nothingShown(page);
  });
});

test('the link opens it at one tap, leaves the address, and is sent to nobody', async () => {
  await serve(byLink);
  const page = await context.newPage();
  const heard = listenTo(page);
  await page.goto(writeLink(served.address, key));
  await page.locator(kept).click();
  await isOpen(page);
  expect(page.url()).toBe(served.address);
  expect(heard.requests.join(' ')).not.toContain(key);
  expect(heard.complaints).toEqual([]);
  expect(await page.title()).toContain(fixtureBooklet.title);
});

test('remembered, it opens by itself from then on, without a network too, and the key is given to nobody', async () => {
  await serve(byLink);
  const page = await visit(writeLink(served.address, key));
  await page.locator(kept).click();
  await isOpen(page);
  await page.waitForSelector('#training', { state: 'attached' });
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await served.close();
  await context.setOffline(true);
  await page.goto('about:blank');
  await page.goto(served.address);
  await isOpen(page);
  await page.waitForSelector('#training', { state: 'attached' });
  const out = await page.evaluate(async () => {
    const opening = indexedDB.open('chalkleaf keys');
    await new Promise((done) => opening.addEventListener('success', done));
    const asked = opening.result.transaction('keys').objectStore('keys').getAll();
    await new Promise((done) => asked.addEventListener('success', done));
    const [{ opens }] = asked.result;
    return crypto.subtle.exportKey('raw', opens).then(
      () => 'given',
      () => 'not given',
    );
  });
  expect(out).toBe('not given');
  // What is put away is what the host has: sealed.
  const put = await page.evaluate(async () => {
    const [name = ''] = await caches.keys();
    const found = await (await caches.open(name)).match(new URL('payload.html', location.href).href);
    return (await found?.text()) ?? '';
  });
  expect(put).toContain('id="sealed"');
  expect(besideEnvelopes(put)).not.toMatch(OF_THE_BOOKLET);
});

test('opened this once, nothing is remembered', async () => {
  await serve(byLink);
  const page = await visit(writeLink(served.address, key));
  await page.locator(once).click();
  await isOpen(page);
  await page.reload();
  await page.waitForSelector('.opening form:not([hidden])');
  await nothingShown(page);
});

test('a link that is put in by hand opens as well', async () => {
  await serve(byLink);
  const page = await visit();
  await page.locator('#opening-link').fill(`Here it is: ${writeLink(served.address, key)} `);
  await page.locator(once).click();
  await isOpen(page);
});

test('words open it, as they are typed on a phone; wrong ones do not, and can be tried again', async () => {
  await serve(byWords);
  const page = await visit();
  await page.locator('#opening-words').fill(SIX.replace('lemon', 'melon'));
  await page.locator(kept).click();
  expect(await said(page)).toBe('These words do not open it. Look at each word, and try again.');
  await nothingShown(page);
  await page.locator('#opening-words').fill(` ${SIX.replace('maple', 'Maple')}. `);
  await page.locator('#opening-words').press('Enter');
  await isOpen(page);
  await page.reload();
  await isOpen(page);
});

test('by both, neither the link nor the words are enough', async () => {
  await serve(byBoth);
  const page = await visit();
  await page.locator('#opening-words').fill(SIX);
  await page.locator(once).click();
  expect(await said(page)).toMatch(/This link does not open it/);
  // Nothing but what stands behind the # is another: the page stays.
  await page.goto(writeLink(served.address, link));
  await page.locator('.by-link').waitFor({ state: 'hidden' });
  await page.locator('#opening-words').fill(`${SIX} more`);
  await page.locator(once).click();
  expect(await said(page)).toMatch(/These words do not open it/);
  await nothingShown(page);
  await page.locator('#opening-words').fill(SIX);
  await page.locator(once).click();
  await isOpen(page);
  await page.goto(writeLink(served.address, link));
  await page.waitForFunction(() => location.hash === '');
});

test('paper is opened in the page and put into the downloads; changed on the way, it is not', async () => {
  await serve(byLink);
  const page = await visit(writeLink(served.address, key));
  await page.locator(once).click();
  await isOpen(page);
  const coming = page.waitForEvent('download');
  await page.locator('[data-part=paper]').click();
  const download = await coming;
  expect(download.suggestedFilename()).toBe(BESIDE.paper.name);
  expect(readFileSync(await download.path())).toEqual(Buffer.from(PAPER));
  files.set(BESIDE.paper.file, utf8(await sealPart(PAPER, 'paper', newKey())));
  await page.locator('[data-part=paper]').click();
  await page.locator('.not-had:not(:empty)').waitFor();
  expect(await page.locator('.not-had').textContent()).toMatch(/did not arrive as it was sent/);
  files.delete(BESIDE.paper.file);
  await page.locator('[data-part=paper]').click();
  await page.getByText('That did not arrive. Try again with a network.').waitFor();
});

test('forgotten, nothing of it is left: no key, no page put away, no mark', async () => {
  await serve(byLink);
  const page = await visit(writeLink(served.address, key));
  await page.locator(kept).click();
  await isOpen(page);
  await page.waitForSelector('#training', { state: 'attached' });
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  const marks = (): Promise<number> =>
    page.evaluate(async (book) => {
      const opening = indexedDB.open('chalkleaf');
      await new Promise((done) => opening.addEventListener('success', done));
      const asked = opening.result.transaction('marks').objectStore('marks').index('book').count(book);
      await new Promise((done) => asked.addEventListener('success', done));
      opening.result.close();
      return asked.result;
    }, BOOK);
  await page.evaluate(async (book) => {
    const opening = indexedDB.open('chalkleaf');
    await new Promise((done) => opening.addEventListener('success', done));
    const work = opening.result.transaction('marks', 'readwrite');
    work.objectStore('marks').put({ id: 'a', book, event: {} });
    await new Promise((done) => work.addEventListener('complete', done));
    opening.result.close();
  }, BOOK);
  expect(await marks()).toBe(1);
  await page.locator('.opened .forget').click();
  await page.locator('.opened .no').click();
  expect(await page.locator('.opened .yes').isVisible()).toBe(false);
  await page.locator('.opened .forget').click();
  await page.locator('.opened .yes').click();
  await page.waitForSelector('.opening form:not([hidden])');
  await nothingShown(page);
  expect(await marks()).toBe(0);
  expect(await page.evaluate(() => caches.keys())).toEqual([]);
  await page.reload();
  await page.waitForSelector('.opening form:not([hidden])');
});

test('axe finds nothing on the page that asks, with what it says, nor at the foot of the cover', async () => {
  await serve(byBoth);
  const page = await visit();
  await page.locator('#opening-words').fill(SIX);
  await page.locator(once).click();
  expect(await said(page)).not.toBe('');
  expect(await axeFaults(page)).toEqual([]);
  await page.locator('#opening-link').fill(writeLink(served.address, link));
  await page.locator(once).click();
  await isOpen(page);
  await page.locator('.opened .forget').click();
  expect(await axeFaults(page)).toEqual([]);
});

const spoiled = (text: string): string => {
  const at = Math.floor(text.length * 0.6);
  return `${text.slice(0, at)}${text[at] === 'A' ? 'B' : 'A'}${text.slice(at + 1)}`;
};

describe('what did not arrive as it was sent is not shown, not half of it', () => {
  test.each([
    [
      'changed',
      (sealed: SealedBooklet) => ({ ...sealed, booklet: spoiled(sealed.booklet) }),
      /did not arrive as it was sent/,
    ],
    [
      'cut off',
      (sealed: SealedBooklet) => ({ ...sealed, booklet: sealed.booklet.slice(0, 900) }),
      /did not arrive as it was sent/,
    ],
    ['nothing', (sealed: SealedBooklet) => ({ ...sealed, booklet: '' }), /did not arrive as it was sent/],
    ['newer than the page', (sealed: SealedBooklet) => ({ ...sealed, form: FORM + 1 }), /newer than this page/],
    ['older than the page', (sealed: SealedBooklet) => ({ ...sealed, form: FORM - 1 }), /older than this page/],
  ])('%s', async (_, change, words) => {
    await serve(byLink, change);
    const page = await visit(writeLink(served.address, key));
    await page.locator(once).click();
    expect(await said(page)).toMatch(words);
    await nothingShown(page);
  });

  test('somebody else’s in its place: a remembered key does not open it, and it is asked for anew', async () => {
    await serve(byLink);
    const page = await visit(writeLink(served.address, key));
    await page.locator(kept).click();
    await isOpen(page);
    const other = await closeLock({ by: 'link', key: newKey() });
    files.set('payload.html', renderSealed(await sealedPart(other), fixtureBooklet.language));
    await page.goto('about:blank');
    await page.goto(served.address);
    await page.waitForSelector('.opening form:not([hidden])');
    await nothingShown(page);
  });

  test('a page from before there were seals leads on to what it cannot open, which says so', async () => {
    await serve(byLink);
    // It knew no other part than one with leaves, and left alone what had none.
    const older = new TextDecoder().decode(files.get('index.html')).replace(/<script>[\s\S]*?<\/script>/, '');
    files.set('index.html', utf8(older));
    const page = await visit();
    await page.locator('a.main').click();
    expect(await page.locator('.unopened').textContent()).toContain('This booklet is sealed');
    await nothingShown(page);
  });

  test('and a page that knows seals still takes in a part without one', async () => {
    await serve(byLink);
    files.set('payload.html', plain.get('payload.html') ?? new Uint8Array());
    const page = await visit();
    await isOpen(page);
  });
});

test('marks leave the phone sealed to the studio', async () => {
  await serve(byLink);
  const page = await visit(writeLink(served.address, key));
  await page.locator(once).click();
  await isOpen(page);
  await page.waitForSelector('#training', { state: 'attached' });
  await page.evaluate(
    async ({ book, event }) => {
      const opening = indexedDB.open('chalkleaf');
      await new Promise((done) => opening.addEventListener('success', done));
      const work = opening.result.transaction('marks', 'readwrite');
      work.objectStore('marks').put({ id: event.id, book, event });
      await new Promise((done) => work.addEventListener('complete', done));
      opening.result.close();
    },
    { book: BOOK as string, event: A_NOTE },
  );
  // Another page first: the same one again would only be given another end of its address.
  await page.goto('about:blank');
  await page.goto(writeLink(served.address, key));
  await page.locator(once).click();
  await isOpen(page);
  await page.evaluate(() => {
    location.hash = '#now';
  });
  await page.getByRole('button', { name: 'This phone', exact: true }).click();
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save all marks as a file' }).click();
  const message = readFileSync(await (await coming).path(), 'utf8');
  expect(besideEnvelopes(message)).not.toContain('knee');
  const opened = await openMarks(message, [pair]);
  expect('text' in opened ? opened.text : opened.fault).toContain('knee felt fine');
});

const A_NOTE = {
  id: '7c9e6679-7425-40de-944b-000000000001',
  seq: 1,
  edition: 1,
  at: `${fixturePlan.starts}T18:30:05+01:00`,
  kind: 'note',
  text: 'knee felt fine',
};
