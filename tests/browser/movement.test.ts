/**
 * The drawing on a set's screen: it moves twice and then stands as a row, moves again when asked, keeps still for who wants that, and
 * does so without a network and within the page's own policy.
 */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { webSources } from '../../src/app/web-sources.js';
import { invariant } from '../../src/model/result.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import { renderBookletFile, renderBookletFolder } from '../../src/web/render-booklet.js';
import { englishPhone as WORDS } from '../../src/words/english-phone.js';
import { type Heard, holdPhone, listenTo } from './phone.js';
import { phoneInHand } from './phone-in-hand.js';
import { faultsOf } from './screen-rules.js';
import { serveFolder } from './serve-folder.js';
import { issuedFor, kindOf, nextTap, says, tapOnce, toTraining } from './train-page.js';

const phone = phoneInHand('movement');
let hosted: ReadonlyMap<string, Uint8Array>;

beforeAll(async () => {
  const [{ booklet, sent, drawings }, parts] = await Promise.all([
    issuedFor('rowan-ashby'),
    prepareShell(webSources()),
  ]);
  await writeFile(join(phone.folder, 'booklet.html'), renderBookletFile(booklet, sent, parts, drawings));
  const files = await renderBookletFolder(booklet, sent, parts, drawings);
  hosted = new Map(files.map(({ path, bytes }) => [path, bytes]));
});

interface Opened {
  readonly page: Page;
  readonly heard: Heard;
}

async function openOn(own: BrowserContext, motion: 'no-preference' | 'reduce'): Promise<Opened> {
  const page = await own.newPage();
  await page.emulateMedia({ reducedMotion: motion });
  return { page, heard: listenTo(page) };
}

async function hold(motion: 'no-preference' | 'reduce'): Promise<readonly [BrowserContext, Opened]> {
  const own = await phone.hold();
  return [own, await openOn(own, motion)];
}

/** To the first set of the first session. */
async function toSet(page: Page): Promise<void> {
  await toTraining(page);
  for (let taps = 0; taps < 12 && (await kindOf(page)) !== 'set'; taps += 1) {
    await tapOnce(page, nextTap(await kindOf(page)));
    // Two taps within 600 ms are one.
    await page.waitForTimeout(650);
  }
  expect(await kindOf(page)).toBe('set');
}

const FILE = (): string => phone.addressOf('booklet.html');

interface Seen {
  /** Parts that move. */
  readonly running: number;
  /** How often each of them does, and for how long, in milliseconds. */
  readonly cycles: readonly number[];
  readonly lengths: readonly number[];
  /** Positions of the drawing that are to be seen. */
  readonly positions: number;
  readonly again: number;
}

const seenOn = (page: Page): Promise<Seen> =>
  page.evaluate((again) => {
    const running = document.getAnimations().filter(({ playState }) => playState === 'running');
    const timings = running.map(({ effect }) => effect?.getComputedTiming());
    // What moves stands on the screen itself; at rest it shows the row that stands in the page.
    const shown = [...document.querySelectorAll('#training .movement svg > *')].filter(
      (one) => one.getBoundingClientRect().width > 0,
    );
    const positions = shown.reduce((sum, one) => {
      const row = document.querySelector(one.getAttribute('href') ?? 'none');
      return sum + (row?.children.length ?? (one.querySelector('path') === null ? 0 : 1));
    }, 0);
    return {
      running: running.length,
      cycles: [...new Set(timings.map((timing) => timing?.iterations ?? 0))],
      lengths: [...new Set(timings.map((timing) => Number(timing?.activeDuration)))],
      positions,
      again: [...document.querySelectorAll('#training button')].filter(({ textContent }) => textContent === again)
        .length,
    };
  }, WORDS.showAgain);

/** Until nothing moves any more; what still moves is hurried when asked. */
async function untilStill(page: Page, rate = 1): Promise<void> {
  await page.evaluate((fast) => {
    for (const one of document.getAnimations()) one.playbackRate = fast;
  }, rate);
  await page.waitForSelector('#training .movement:not(.moving)', { timeout: 20_000 });
}

const AGAIN = says(WORDS.showAgain);

test('it moves twice, then stands as a row with a button low on the page that shows it again', async () => {
  const [, { page, heard }] = await hold('no-preference');
  await page.goto(FILE());
  await toSet(page);
  const began = Date.now();
  const first = await seenOn(page);
  expect(first.running).toBeGreaterThan(2);
  expect(first).toMatchObject({ cycles: [2], positions: 1, again: 0 });
  const [length = 0] = first.lengths;
  expect(first.lengths).toEqual([length]);
  await untilStill(page);
  // It was moving for a moment already when it was looked at first.
  expect(Date.now() - began).toBeGreaterThan(length - 1500);
  const after = await seenOn(page);
  expect(after).toMatchObject({ running: 0, again: 1 });
  expect(after.positions).toBeGreaterThan(1);
  const place = await page.locator(AGAIN).boundingBox();
  invariant(place !== null, 'the button stands on the page');
  expect(place.y).toBeGreaterThan(0.4 * 640);
  expect(await faultsOf(page)).toEqual([]);
  await page.waitForTimeout(650);
  await page.locator(AGAIN).tap();
  await page.waitForSelector('#training .movement.moving');
  expect(await seenOn(page)).toMatchObject({ running: first.running, cycles: [2], positions: 1, again: 0 });
  await untilStill(page, 40);
  expect(await seenOn(page)).toEqual(after);
  expect(heard.complaints).toEqual([]);
});

test('where it is held, what moved stands as the last position does', async () => {
  const [, { page }] = await hold('no-preference');
  await page.goto(FILE());
  await toSet(page);
  const found = await page.evaluate(() => {
    const shown = document.querySelector('#training .movement.moving svg');
    const own = document.querySelector(`.leaf.exercise svg[aria-label=${CSS.escape(shown?.ariaLabel ?? '')}]`);
    const row = document.querySelector(own?.querySelector('use')?.getAttribute('href') ?? 'none');
    const last = row?.lastElementChild?.querySelector(':scope > g')?.cloneNode(true);
    if (!shown || !last) return undefined;
    const boxes = (all: Iterable<Element>): readonly number[] => {
      const spots = [...all].flatMap((one) => {
        if (!(one instanceof SVGGeometryElement)) return [];
        const length = one.getTotalLength();
        const to = one.getScreenCTM() ?? new DOMMatrix();
        return Array.from({ length: 200 }, (_, i) => one.getPointAtLength((length * i) / 200).matrixTransform(to));
      });
      const [xs, ys] = [spots.map(({ x }) => x), spots.map(({ y }) => y)];
      return [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
    };
    const figure = [...shown.children].findLast(({ tagName }) => tagName === 'g');
    if (!(figure instanceof Element)) return undefined;
    const first = boxes(figure.querySelectorAll('path'));
    for (const one of document.getAnimations()) {
      one.pause();
      const { effect } = one;
      const frames = effect instanceof KeyframeEffect ? effect.getKeyframes() : [];
      // The middle of the rest between out and back: of the moments in order, those about the longest way out.
      const offsets = frames.map(({ computedOffset }) => computedOffset).filter((at) => at < 1);
      const middle = (offsets.length - 1) / 2;
      const held = ((offsets[Math.floor(middle)] ?? 0) + (offsets[Math.ceil(middle)] ?? 0)) / 2;
      one.currentTime = held * Number(effect?.getComputedTiming().duration);
    }
    const moved = boxes(figure.querySelectorAll('path'));
    shown.append(last);
    const still = last instanceof Element ? boxes(last.querySelectorAll('path')) : [];
    const perCentimetre =
      (shown.getBoundingClientRect().height / Number(shown.getAttribute('viewBox')?.split(' ')[3])) * 2;
    const off = (one: readonly number[], other: readonly number[]): number =>
      Math.max(...one.map((side, index) => Math.abs(side - (other[index] ?? 0)))) / perCentimetre;
    return { before: off(first, still), after: off(moved, still) };
  });
  expect(found?.before).toBeGreaterThan(20);
  expect(found?.after).toBeLessThan(2);
});

test('hosted, it moves without a network as with one, and breaks no rule of the page', async () => {
  const served = await serveFolder(hosted, '/studio/7f3a/');
  try {
    const [own, { page, heard }] = await hold('no-preference');
    await page.goto(served.address);
    await page.waitForSelector('.book.ready');
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    expect(heard.complaints).toEqual([]);
    expect(served.missed).toEqual([]);
    await served.close();
    await own.setOffline(true);
    await page.goto('about:blank');
    await page.goto(served.address);
    await toSet(page);
    expect(await seenOn(page)).toMatchObject({ cycles: [2], positions: 1 });
    await untilStill(page, 40);
    expect(await seenOn(page)).toMatchObject({ running: 0, again: 1 });
    const broken = heard.complaints.filter((one) => /policy|refused|violat/i.test(one));
    expect(broken).toEqual([]);
  } finally {
    await served.close();
  }
});

describe('for who wants nothing to move', () => {
  let held: BrowserContext;
  let still: Opened;
  beforeAll(async () => {
    // Held through all the tests below, so not the phone that is put down after each.
    held = await holdPhone(phone.browser);
    still = await openOn(held, 'reduce');
    await still.page.goto(FILE());
    await toSet(still.page);
  });
  afterAll(() => held?.close());

  test('where nothing is to move nothing does, and nothing is offered; it is told in words', async () => {
    const { page, heard } = still;
    const { positions, ...rest } = await seenOn(page);
    expect(rest).toEqual({ running: 0, cycles: [], lengths: [], again: 0 });
    expect(positions).toBeGreaterThan(1);
    const picture = page.locator('#training .movement svg');
    expect(await picture.getAttribute('role')).toBe('img');
    const told = (await picture.getAttribute('aria-label')) ?? '';
    expect(told.split(/\s+/).length).toBeGreaterThan(5);
    // As many copies as there are, each name stands once in the page.
    const names = await page.evaluate(() => [...document.querySelectorAll('[id]')].map(({ id }) => id));
    expect(names.filter((name, index) => names.indexOf(name) !== index)).toEqual([]);
    expect(await faultsOf(page)).toEqual([]);
    expect(heard.complaints).toEqual([]);
  });

  test('on the smallest phone the main button and the first cue stand beside it', async () => {
    const { page } = still;
    await page.setViewportSize({ width: 320, height: 568 });
    await page.evaluate(() => scrollTo(0, 0));
    const inSight = await page.evaluate(() => {
      const boxOf = (selector: string) => document.querySelector(`#training ${selector}`)?.getBoundingClientRect();
      const [bar, main, cue, picture] = ['.bar', '#training-main', '.cues > li', '.movement svg'].map(boxOf);
      return {
        main: (main?.height ?? 0) >= 52 && (main?.bottom ?? Number.POSITIVE_INFINITY) <= innerHeight,
        cue: (cue?.height ?? 0) > 0 && (cue?.bottom ?? Number.POSITIVE_INFINITY) <= (bar?.top ?? 0),
        picture: (picture?.height ?? 0) >= 56 && (picture?.right ?? Number.POSITIVE_INFINITY) <= innerWidth,
      };
    });
    expect(inSight).toEqual({ main: true, cue: true, picture: true });
    expect(await faultsOf(page)).toEqual([]);
  });

  test('in forced colours a limb is the paper between two edges', async () => {
    const { page } = still;
    await page.emulateMedia({ forcedColors: 'active', reducedMotion: 'reduce' });
    const painted = await page.evaluate(() => {
      const probe = document.body.appendChild(document.createElement('p'));
      const named = (colour: string): string => {
        probe.style.color = colour;
        return getComputedStyle(probe).color;
      };
      const [paper, ink] = [named('Canvas'), named('CanvasText')];
      probe.remove();
      const row = document.querySelector('#training .movement use')?.getAttribute('href') ?? '';
      const of = (selector: string, property: 'fill' | 'stroke'): readonly string[] => {
        const all = [...document.querySelectorAll(`${row} > g:first-child > g ${selector}`)];
        return [...new Set(all.map((one) => getComputedStyle(one)[property]))];
      };
      return { paper, ink, limbs: of('.fb', 'fill'), edges: of('.fb', 'stroke'), bare: of('.fp', 'fill') };
    });
    expect(painted.paper).not.toBe(painted.ink);
    expect(painted).toMatchObject({ limbs: [painted.paper], bare: [painted.paper], edges: [painted.ink] });
  });
});
