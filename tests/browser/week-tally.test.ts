/**
 * The week beside what was trained: the tally of this phone's marks stands beside each exercise, on time, in its own room, and said
 * aloud; without script the number of sets can be read all the same.
 */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { beforeAll, expect, test } from 'vitest';
import { webSources } from '../../src/app/web-sources.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import { renderBookletFile, renderBookletFolder } from '../../src/web/render-booklet.js';
import { axeFaults } from './axe.js';
import { contrastOf } from './contrast.js';
import { type Held, listenTo } from './phone.js';
import { phoneInHand } from './phone-in-hand.js';
import { serveFolder } from './serve-folder.js';
import { eventsIn, type Issued, issuedFor, kindOf, nextTap, says, tap, toTraining } from './train-page.js';

const START = new Date('2027-01-04T18:00:00');
const phone = phoneInHand('week-tally');
let issued: Issued;
let files: ReadonlyMap<string, Uint8Array>;

beforeAll(async () => {
  issued = await issuedFor('rowan-ashby');
  const { booklet, sent } = issued;
  const parts = await prepareShell(webSources());
  await writeFile(join(phone.folder, 'booklet.html'), renderBookletFile(booklet, sent, parts));
  files = new Map((await renderBookletFolder(booklet, sent, parts)).map(({ path, bytes }) => [path, bytes]));
});

async function open(address: string, held: Held = {}): Promise<Page> {
  const page = await (await phone.hold(held)).newPage();
  await page.clock.install({ time: START });
  await page.goto(address);
  return page;
}
const single = (): string => phone.addressOf('booklet.html');

/** Each exercise of the first session: its name, and what is said of its tally. */
const toldOf = (page: Page, week = 1): Promise<readonly (readonly string[])[]> =>
  page
    .locator(`#week-${week} .turns >> nth=0`)
    .evaluate((list) =>
      [...list.children].map((line) => [
        line.querySelector('.name')?.textContent ?? '',
        ...[...line.querySelectorAll('svg')].map((tally) =>
          (tally.getAttribute('aria-label') ?? '').replaceAll('\u00a0', ' '),
        ),
      ]),
    );

async function toWeek(page: Page, week = 1): Promise<void> {
  await page.evaluate((to) => {
    location.hash = `#week-${to}`;
  }, week);
  await page.locator(`#week-${week} .turns svg`).first().waitFor();
}

async function onTo(page: Page, kind: string): Promise<void> {
  for (let taps = 0; taps < 60 && (await kindOf(page)) !== kind; taps += 1)
    await tap(page, nextTap(await kindOf(page)));
  expect(await kindOf(page)).toBe(kind);
}

/** The next set that can be marked; a rest before it is cut short. */
async function atSet(page: Page): Promise<void> {
  for (let taps = 0; taps < 12 && (await kindOf(page)) !== 'set'; taps += 1)
    await tap(page, nextTap(await kindOf(page)));
}

/** Past the lighter set, and the first set of work done. */
async function oneDone(page: Page): Promise<void> {
  await toTraining(page);
  await onTo(page, 'set');
  while ((await page.locator('.set-line').first().textContent())?.includes('warm up')) {
    await tap(page, '#training-main');
    await atSet(page);
  }
  await tap(page, '#training-main');
}

const SQUAT = 'Goblet squat';
const TO_DO = [
  [SQUAT, '2 sets to do'],
  ['One-arm row', 'Left: 2 sets to do', 'Right: 2 sets to do'],
  ['Push-up from the knees', '2 sets to do'],
  ['Dead bug', '2 sets to do'],
];

test('without script the sets of every exercise are told in words, and no foot says that they are to be done', async () => {
  const page = await open(single(), { javaScript: false });
  expect(await page.locator('.leaf:is(.week, .turn, .session) svg').count()).toBe(0);
  const lines = await page.locator('#week-1 .turns >> nth=0').locator('b').allTextContents();
  expect(lines.map((line) => line.replaceAll('\u00a0', ' '))).toEqual([
    '16 kg × 9, 2 sets',
    '12 kg × 8, 2 sets each side',
    '8 reps, 2 sets',
    '7 reps, 2 sets',
  ]);
  const heights = await page
    .locator('#week-1 .turns >> nth=0')
    .evaluate((list) => [...list.children].map((line) => Math.round(line.getBoundingClientRect().height)));
  // No room is kept for what does not come.
  expect(new Set(heights).size).toBe(1);
});

test('what is marked, left out and rubbed out is so in the week at once, and after the page was opened again', async () => {
  const page = await open(single());
  const heard = listenTo(page);
  await toWeek(page);
  expect(await toldOf(page)).toEqual(TO_DO);
  await oneDone(page);
  await toWeek(page);
  const [, ...others] = TO_DO;
  expect(await toldOf(page)).toEqual([[SQUAT, '1 set done; 1 to do'], ...others]);
  await toTraining(page);
  await tap(page, says('Rub out set 1'));
  await toWeek(page);
  expect(await toldOf(page)).toEqual(TO_DO);
  await toTraining(page);
  await tap(page, says('Leave this set out'));
  await atSet(page);
  await tap(page, '#training-main');
  await toWeek(page);
  const now = [[SQUAT, '1 set done; 1 left out'], ...others];
  expect(await toldOf(page)).toEqual(now);
  await page.reload();
  await toWeek(page);
  expect(await toldOf(page)).toEqual(now);
  expect(heard.complaints).toEqual([]);
});

test('the easier way, one more and what is open at the end stand in it, by shape and in words', async () => {
  const page = await open(single());
  await oneDone(page);
  await tap(page, says('Easier today'));
  await tap(page, '.training-page > .answers .tap >> nth=0');
  await atSet(page);
  await tap(page, '#training-main');
  await toTraining(page);
  await onTo(page, 'set');
  await tap(page, says('Stop here for today'));
  await onTo(page, 'finished');
  expect((await eventsIn(page)).at(-1)?.kind).toBe('closed');
  await toWeek(page);
  expect(await toldOf(page)).toEqual([
    [SQUAT, '1 set done; 1 done, easier'],
    ['One-arm row', 'Left: 2 sets left out', 'Right: 2 sets left out'],
    ['Push-up from the knees', '2 sets left out'],
    ['Dead bug', '2 sets left out'],
  ]);
  const drawn = await page.locator('#week-1 .turns >> nth=0').evaluate((list) =>
    [...list.querySelectorAll('svg')].map((tally) => ({
      full: tally.querySelector('.full')?.getAttribute('d')?.split('M').length ?? 1,
      letters: [...tally.querySelectorAll('text')].map(({ textContent }) => textContent),
      dashes: tally.querySelector('path:not([class])')?.getAttribute('d')?.split('h8').length ?? 1,
    })),
  );
  expect(drawn.slice(0, 2)).toEqual([
    { full: 3, letters: ['e'], dashes: 1 },
    { full: 1, letters: [], dashes: 3 },
  ]);
  // The session of the same week that is still to come is to do, and so is the next week's.
  expect(await page.locator('#week-1 .turns >> nth=1').locator('svg[aria-label$="to do"]').count()).toBeGreaterThan(4);
  await toWeek(page, 2);
  expect(
    (await toldOf(page, 2)).flat().filter((told) => /\d/.test(told) && !/^(\w+: )?\d sets to do$/.test(told)),
  ).toEqual([]);
});

test.each(['light', 'dark'] as const)('by the rules of axe-core and of contrast, %s', async (scheme) => {
  const page = await open(single(), { scheme });
  await oneDone(page);
  await toWeek(page);
  expect(await axeFaults(page, { within: '#week-1', strictContrast: true })).toEqual([]);
  const colours = await page.locator('#week-1 svg path >> nth=0').evaluate((path) => ({
    ink: getComputedStyle(path).stroke,
    page: getComputedStyle(document.documentElement).backgroundColor,
  }));
  // Graphics that must be told apart: 3 to 1 (WCAG 2.2, 1.4.11).
  expect(contrastOf(colours.ink, colours.page)).toBeGreaterThanOrEqual(3);
});

test.each([360, 320])('nothing moves when the tallies come, on a screen of %i', async (width) => {
  const served = await serveFolder(files, '/studio/week/');
  try {
    const page = await (await phone.hold({ width })).newPage();
    let send = (): void => undefined;
    const held = new Promise<void>((done) => {
      send = done;
    });
    await page.route('**/training.js', async (route) => {
      await held;
      await route.continue();
    });
    await page.goto(`${served.address}#week-1`, { waitUntil: 'commit' });
    await page.waitForSelector('.book.ready');
    await page.evaluate(() => document.fonts.ready.then(() => undefined));
    const places = (): Promise<readonly (readonly number[])[]> =>
      page.locator('#week-1').evaluate((leaf) =>
        [...leaf.querySelectorAll('li, h3, footer')].map((one) => {
          const { top, height } = one.getBoundingClientRect();
          return [top, height];
        }),
      );
    const before = await places();
    expect(await page.locator('#week-1 svg').count()).toBe(0);
    send();
    await page.locator('#week-1 .turns svg').first().waitFor();
    expect(await places()).toEqual(before);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  } finally {
    await served.close();
  }
});

test('a week that the browser turns to for words it found has its tallies, and so has one that another window marks in', async () => {
  const page = await open(single());
  await oneDone(page);
  // As of what is found in a leaf that was put away (HTML Living Standard, 6.1).
  await page.locator('#week-2').evaluate((leaf) => leaf.dispatchEvent(new Event('beforematch', { bubbles: true })));
  expect((await toldOf(page, 2))[0]).toEqual([SQUAT, '2 sets to do']);
  const other = await page.context().newPage();
  await other.clock.install({ time: START });
  await other.goto(`${single()}#week-1`);
  await other.locator('#week-1 .turns svg').first().waitFor();
  expect((await toldOf(other))[0]).toEqual([SQUAT, '1 set done; 1 to do']);
  await toTraining(page);
  await atSet(page);
  await tap(page, '#training-main');
  await other.bringToFront();
  await expect.poll(async () => (await toldOf(other))[0]).toEqual([SQUAT, '2 sets done']);
});

test('opened again without a network the week shows what was marked', async () => {
  const served = await serveFolder(files, '/studio/week/');
  const page = await open(served.address);
  try {
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await oneDone(page);
    await served.close();
    await page.context().setOffline(true);
    await page.goto('about:blank');
    await page.goto(`${served.address}#week-1`);
    await page.locator('#week-1 .turns svg').first().waitFor();
    expect((await toldOf(page))[0]).toEqual([SQUAT, '1 set done; 1 to do']);
  } finally {
    await served.close();
  }
});
