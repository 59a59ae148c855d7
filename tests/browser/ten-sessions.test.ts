/**
 * Sessions by script on a hosted booklet with the network off: the browser killed between any two taps, the page read anew,
 * a second window, hours in a pocket. At the end every mark is there once, and the message tells just what was done.
 */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { checkLog } from '../../src/app/check-log.js';
import { webSources } from '../../src/app/web-sources.js';
import { readText } from '../../src/marks/read-text.js';
import { dayOfIso } from '../../src/model/day.js';
import { FOLDER } from '../../src/model/problem.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import { renderBookletFolder } from '../../src/web/render-booklet.js';
import { runs } from '../deep.js';
import { anEdition } from '../session/make-marks.js';
import { browserArguments, killBrowser, WHOLE_BROWSER } from './phone.js';
import { type Served, serveFolder } from './serve-folder.js';
import { eventsIn, type Issued, issuedFor, keysOf, kindOf, nextTap, tap } from './train-page.js';

const SESSIONS = runs(2, 10);
let served: Served;
let profile: string;
let context: BrowserContext;
let issued: Issued;
let moment = Date.parse('2027-01-04T18:00:00');

/** The same accidents every time: a small generator of Lehmer's kind (Park and Miller 1988). */
let seed = 20270104;
const draw = (of: number): number => {
  seed = (seed * 48_271) % 2_147_483_647;
  return seed % of;
};

const openBrowser = (): Promise<BrowserContext> =>
  chromium.launchPersistentContext(profile, {
    executablePath: WHOLE_BROWSER,
    args: browserArguments,
    viewport: { width: 360, height: 640 },
    hasTouch: true,
    isMobile: true,
  });

async function openPage(): Promise<Page> {
  const page = context.pages()[0] ?? (await context.newPage());
  await page.clock.install({ time: moment });
  await page.goto(`${served.address}#now`);
  await page.waitForSelector('#training .training-sheet', { state: 'visible' });
  return page;
}

beforeAll(async () => {
  profile = await mkdtemp(join(tmpdir(), 'sessions-'));
  issued = await issuedFor('rowan-ashby');
  const { booklet, sent, drawings } = issued;
  const files = await renderBookletFolder(booklet, sent, await prepareShell(webSources()), drawings);
  served = await serveFolder(new Map(files.map(({ path, bytes }) => [path, bytes])), '/gym/b/');
  context = await openBrowser();
  const page = await openPage();
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await served.close();
});
afterAll(async () => {
  await context?.close();
  await rm(profile, { recursive: true, force: true });
});

async function accident(page: Page): Promise<Page> {
  switch (draw(50)) {
    case 0:
    case 1:
      await killBrowser(profile, context);
      context = await openBrowser();
      return openPage();
    case 2:
    case 3:
      // Locked in a pocket.
      await page.clock.fastForward(300_000);
      moment += 300_000;
      return page;
    case 4:
    case 5:
      await page.reload();
      await page.waitForSelector('#training .training-sheet', { state: 'visible' });
      return page;
    case 6: {
      const other = await context.newPage();
      await other.goto(`${served.address}#now`);
      await other.waitForSelector('#training .training-sheet', { state: 'visible' });
      await other.close();
      return page;
    }
    default:
      return page;
  }
}

const PATIENCE = 30_000 + 30_000 * SESSIONS;

test(`${SESSIONS} sessions without a network, with every accident there is`, { timeout: PATIENCE }, async () => {
  let page = await openPage();
  let closed = 0;
  for (let taps = 0; taps < 120 * SESSIONS && closed < SESSIONS; taps += 1) {
    page = await accident(page);
    const kind = await kindOf(page);
    await tap(page, kind.startsWith('question') ? nextTap(kind) : '#training-main');
    moment += 30_000;
    if ((await kindOf(page)) !== 'finished') continue;
    closed += 1;
    // Passed on is not gone: the way home, two days on.
    await page.locator('.bar .tap >> nth=0').tap();
    await page.waitForSelector('.training-sheet.home');
    moment += 2 * 86_400_000;
    await page.clock.setSystemTime(moment);
    await page.reload();
    await page.waitForSelector('#training .training-sheet', { state: 'visible' });
  }
  const events = await eventsIn(page);
  const done = Array.from({ length: SESSIONS }, (_, i) => keysOf(issued.sent, i + 1)).flat();
  const keys = events.flatMap(({ kind, key }) => (kind === 'set' && key !== undefined ? [key] : []));
  expect([...keys].sort()).toEqual([...done].sort());
  expect(events.filter(({ kind }) => kind === 'closed')).toHaveLength(SESSIONS);
  expect(events.map((event) => (event as unknown as { seq: number }).seq)).toEqual(events.map((_, i) => i + 1));

  // As it goes to the coach, and as the coach's side reads it.
  await page.locator('text=Pass to my coach').first().tap();
  const message = await page.locator('.message').textContent();
  const read = readText(message ?? '');
  const log = Array.isArray(read) ? read[0] : undefined;
  expect(log?.events).toEqual(events);
  expect(read).toHaveLength(1);
  const setting = {
    editions: [anEdition(issued.plan, 1)],
    exercises: new Set<string>(),
    today: dayOfIso(new Date(moment).toISOString().slice(0, 10)) ?? expect.fail(),
    place: { file: 'marks.txt', line: 1, column: 1, length: 0 },
    scope: FOLDER,
  };
  expect(log === undefined ? 'none' : checkLog(log, setting)).toBeNull();
});
