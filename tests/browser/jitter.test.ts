/**
 * Hands that tremble: fingers come down anywhere on a button, wobble by up to twelve pixels, tap twice, slide off. No stroke
 * is lost and none is doubled. And strokes themselves: five states that differ in shape, without any colour.
 */
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { webSources } from '../../src/app/web-sources.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import { renderBookletFile } from '../../src/web/render-booklet.js';
import { holdPhone, openBrowser } from './phone.js';
import { eventsIn, type Issued, issuedFor, keysOf, kindOf, nextTap, toTraining } from './train-page.js';

const SESSIONS = process.env.CHALKLEAF_DEEP === '1' ? 12 : 4;
const START = Date.parse('2027-01-04T18:00:00');
let browser: Browser;
let folder: string;
let issued: Issued;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'jitter-'));
  issued = await issuedFor('rowan-ashby');
  const parts = await prepareShell(webSources());
  await writeFile(join(folder, 'booklet.html'), renderBookletFile(issued.booklet, issued.sent, parts));
  browser = await openBrowser();
});
afterAll(async () => {
  await browser?.close();
  await rm(folder, { recursive: true, force: true });
});

async function open(): Promise<Page> {
  const context = await holdPhone(browser);
  const page = await context.newPage();
  await page.clock.install({ time: START });
  await page.goto(pathToFileURL(join(folder, 'booklet.html')).href);
  return page;
}

/** As `(seed × 48271) mod (2³¹ − 1)`: Park and Miller 1988. */
function fingers(from: number): (below: number) => number {
  let seed = from;
  return (below) => {
    seed = (seed * 48_271) % 2_147_483_647;
    return seed % below;
  };
}

interface Touch {
  readonly selector: string;
  /** Where on the button, thousandths of its width and height. */
  readonly at: readonly [number, number];
  readonly wobble: readonly [number, number];
  readonly off: boolean;
}

/** One finger, down and up again, as pointer events of the page. */
const touch = (page: Page, { selector, ...how }: Touch): Promise<void> =>
  page
    .locator(selector)
    .first()
    .evaluate((button, { at, wobble, off }) => {
      const box = button.getBoundingClientRect();
      const inside = (value: number, least: number, most: number): number =>
        Math.min(most - 1, Math.max(least + 1, value));
      const x = inside(box.left + (box.width * at[0]) / 1000, box.left, box.right);
      const y = inside(box.top + (box.height * at[1]) / 1000, box.top, box.bottom);
      const up = off
        ? ([x, Math.max(0, y - 200)] as const)
        : ([inside(x + wobble[0], box.left, box.right), inside(y + wobble[1], box.top, box.bottom)] as const);
      const send = (type: string, clientX: number, clientY: number): void => {
        const target = type === 'pointerdown' ? button : (document.elementFromPoint(clientX, clientY) ?? button);
        target.dispatchEvent(
          new PointerEvent(type, {
            bubbles: true,
            pointerId: 7,
            pointerType: 'touch',
            isPrimary: true,
            clientX,
            clientY,
          }),
        );
      };
      send('pointerdown', x, y);
      send('pointermove', (x + up[0]) / 2, (y + up[1]) / 2);
      send('pointerup', up[0], up[1]);
    }, how);

test(`${SESSIONS} sessions with trembling hands: every set is marked once`, {
  timeout: 60_000 + 30_000 * SESSIONS,
}, async () => {
  const page = await open();
  await toTraining(page);
  const draw = fingers(7919);
  let slid = 0;
  let doubled = 0;
  for (let occurrence = 1; occurrence <= SESSIONS; occurrence += 1) {
    for (let taps = 0; taps < 300; taps += 1) {
      const kind = await kindOf(page);
      if (kind === 'finished') break;
      const finger = (off: boolean): Touch => ({
        selector: nextTap(kind),
        at: [draw(1000), draw(1000)],
        wobble: [draw(17) - 8, draw(17) - 8],
        off,
      });
      if (draw(5) === 0) {
        slid += 1;
        await touch(page, finger(true));
      }
      const before = await page.evaluate(() => document.querySelector('#training')?.innerHTML);
      await touch(page, finger(false));
      await page.waitForFunction((was) => document.querySelector('#training')?.innerHTML !== was, before);
      if (kind.startsWith('set') && draw(3) === 0 && (await kindOf(page)).startsWith('set')) {
        doubled += 1;
        await page.clock.runFor(60 + draw(480));
        await touch(page, { ...finger(false), selector: '#training-main' });
      }
      await page.clock.runFor(700);
    }
    expect(await kindOf(page)).toBe('finished');
    await page.locator('.bar .tap >> nth=0').tap();
    await page.waitForSelector('.training-sheet.home');
    await page.clock.runFor(700);
  }
  const keys = (await eventsIn(page)).flatMap(({ kind, key }) => (kind === 'set' && key !== undefined ? [key] : []));
  const planned = Array.from({ length: SESSIONS }, (_, i) => keysOf(issued.sent, i + 1)).flat();
  expect([...keys].sort()).toEqual([...planned].sort());
  expect(Math.min(slid, doubled)).toBeGreaterThan(4);
  await page.context().close();
});

test.each(['none', 'active'] as const)(
  'five states of the tally differ in shape alone, forced colours: %s',
  async (forcedColors) => {
    const page = await open();
    await page.emulateMedia({ forcedColors });
    await page.evaluate(() => {
      location.hash = '#how-to';
    });
    await page.waitForSelector('#how-to .key svg', { state: 'visible' });
    // In grey, so that no colour can tell what shape does not.
    await page.evaluate(() => {
      const sheet = new CSSStyleSheet();
      sheet.replaceSync('html { filter: grayscale(1) }');
      document.adoptedStyleSheets = [sheet];
    });
    const marks = page.locator('#how-to .key svg');
    expect(await marks.count()).toBe(5);
    const shots: string[] = [];
    for (let i = 0; i < 5; i += 1) shots.push((await marks.nth(i).screenshot()).toString('base64'));
    expect(new Set(shots).size).toBe(5);
    await page.context().close();
  },
);
