/**
 * Screens that stand only in certain states: what is to be known on the way in, and every shape an exercise can have. On each
 * the rules of every training screen; and what is heard never comes without what is seen.
 */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { beforeAll, expect, test } from 'vitest';
import { webSources } from '../../src/app/web-sources.js';
import type { ClientPlan } from '../../src/model/client-plan.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import { renderBookletFile } from '../../src/web/render-booklet.js';
import { englishPhone as WORDS } from '../../src/words/english-phone.js';
import { everyShapeBooklet, everyShapeDrawings, everyShapeSent } from './every-shape-booklet.js';
import { phoneInHand } from './phone-in-hand.js';
import { faultsOf } from './screen-rules.js';
import { type Issued, issuedFor, kindOf, nextTap, says, tap, toTraining } from './train-page.js';

const START = Date.parse('2027-01-04T18:00:00');
const DAY = 86_400_000;
const phone = phoneInHand('states');
let issued: Issued;

beforeAll(async () => {
  issued = await issuedFor('rowan-ashby');
  const { booklet, sent, drawings } = issued;
  const parts = await prepareShell(webSources());
  const { bookletId: _, ...unissued } = sent;
  const plans: Readonly<Record<string, ClientPlan>> = {
    first: sent,
    second: { ...sent, edition: 2 },
    ended: { ...sent, standing: 'ended' },
    withdrawn: { ...sent, standing: 'withdrawn' },
    draft: { ...unissued, edition: 0 },
  };
  for (const [name, plan] of Object.entries(plans))
    await writeFile(join(phone.folder, `${name}.html`), renderBookletFile(booklet, plan, parts, drawings));
  const shapes = renderBookletFile(everyShapeBooklet, everyShapeSent, parts, everyShapeDrawings);
  await writeFile(join(phone.folder, 'shapes.html'), shapes);
});

async function hold(scheme: 'light' | 'dark' = 'light'): Promise<Page> {
  const context = await phone.hold({ scheme });
  const page = await context.newPage();
  await page.clock.install({ time: START });
  return page;
}

async function open(page: Page, name: string): Promise<void> {
  await page.goto('about:blank');
  await page.goto(`${phone.addressOf(`${name}.html`)}#now`);
  await toTraining(page);
}

/** Until what it does next is another: then what it did is kept, whatever becomes of the page. */
async function pressMain(page: Page): Promise<void> {
  const before = await page.locator('#training-main').textContent();
  await tap(page, '#training-main');
  await page.waitForFunction((was) => document.querySelector('#training-main')?.textContent !== was, before);
}

const read = async (page: Page): Promise<string> =>
  ((await page.locator('#training .training-page').textContent()) ?? '').replaceAll('\u00a0', ' ');

const dose = async (page: Page): Promise<string> =>
  ((await page.locator('#training .load').first().textContent()) ?? '').replaceAll('\u00a0', ' ');

async function untilSet(page: Page): Promise<void> {
  for (let taps = 0; taps < 12 && (await kindOf(page)) !== 'set'; taps += 1) {
    await tap(page, nextTap(await kindOf(page)));
  }
}

test('on the way in: a draft, an edition that ended or was withdrawn, a browser that keeps nothing', async () => {
  const page = await hold();
  const said = { draft: WORDS.draft[0], ended: WORDS.ended, withdrawn: WORDS.withdrawn };
  for (const [name, words] of Object.entries(said)) {
    await open(page, name);
    expect(await read(page)).toContain(words);
    expect(await faultsOf(page)).toEqual([]);
    // Nobody trains from a booklet that no longer holds.
    expect(await page.locator('#training-main').count()).toBe(name === 'draft' ? 1 : 0);
  }
  await page.addInitScript(() => Object.defineProperty(window, 'indexedDB', { value: undefined }));
  await open(page, 'first');
  expect(await read(page)).toContain(WORDS.cannotKeep['no storage'][0]);
  expect(await page.locator('#training-main').count()).toBe(0);
  expect(await faultsOf(page)).toEqual([]);
});

test('on the way in: a set left in hand, what hurt the last time, a new edition, days away, and marks not yet passed on', async () => {
  const page = await hold('dark');
  await open(page, 'first');
  await untilSet(page);
  await pressMain(page);
  if ((await kindOf(page)).includes('resting')) await pressMain(page);
  await page.clock.fastForward(300_000);
  await open(page, 'first');
  expect(await read(page)).toMatch(/You were on set \d, five minutes ago\.Did you finish it\?/);
  expect(await faultsOf(page)).toEqual([]);
  await tap(page, '#training-main');
  await untilSet(page);
  for (const answer of [WORDS.somethingHurts, WORDS.noneOfThese, WORDS.parts.knee, WORDS.side.left, '2'])
    await tap(page, says(answer));
  for (let taps = 0; taps < 120 && (await kindOf(page)) !== 'finished'; taps += 1) {
    await tap(page, nextTap(await kindOf(page)));
  }
  await tap(page, '.bar .tap >> nth=0');
  expect(await read(page)).toContain('1 session not yet passed to your coach.');
  expect(await faultsOf(page)).toEqual([]);
  // What hurt is asked of before the next session, in one question, and nothing is kept of who cannot say.
  await page.clock.setSystemTime(START + 3 * DAY);
  await open(page, 'first');
  await tap(page, '#training-main');
  expect(await read(page)).toContain('Knee, left, 2 of 10Was it worse the next morning?It hurt on Mon 4 Jan.');
  expect(await faultsOf(page)).toEqual([]);
  await tap(page, says(WORDS.notSaid));
  expect(await read(page)).toContain(WORDS.howIsToday);
  await page.clock.setSystemTime(START + 10 * DAY);
  await open(page, 'second');
  const home = await read(page);
  expect(home).toContain(WORDS.newEdition(2)[0]);
  expect(home).toContain(WORDS.newEdition(2)[1]);
  expect(home).toMatch(/It has been 10 days\.Nothing to catch up\./);
  expect(await faultsOf(page)).toEqual([]);
});

test('on the way in: a phone with no room left, marks that another window holds, and so many days away that the coach is asked', async () => {
  const page = await hold();
  await open(page, 'first');
  await untilSet(page);
  await tap(page, '#training-main');
  await page.evaluate(() => {
    IDBObjectStore.prototype.add = () => {
      throw new DOMException('no room', 'QuotaExceededError');
    };
  });
  while ((await kindOf(page)).startsWith('set')) await tap(page, '#training-main');
  for (const line of WORDS.cannotKeep.full) expect(await read(page)).toContain(line);
  expect(await page.locator('#training-main').count()).toBe(0);
  expect(await faultsOf(page)).toEqual([]);
  // Opened anew there is room again; then a newer copy of the program takes the store.
  await open(page, 'first');
  for (let taps = 0; taps < 120 && (await kindOf(page)) !== 'finished'; taps += 1) {
    await tap(page, nextTap(await kindOf(page)));
  }
  await page.clock.setSystemTime(START + 20 * DAY);
  await open(page, 'first');
  const home = await read(page);
  expect(home).toMatch(/It has been 20 days\./);
  expect(home).toContain(WORDS.awayLong);
  expect(await faultsOf(page)).toEqual([]);
  await page.evaluate(() => {
    indexedDB.open('chalkleaf', 99);
  });
  await page.waitForSelector('#training [role="alert"]');
  for (const line of WORDS.cannotKeep['held elsewhere']) expect(await read(page)).toContain(line);
  expect(await page.locator('#training-main').count()).toBe(0);
  expect(await faultsOf(page)).toEqual([]);
});

test('every shape of an exercise, with its table, its gate, its clock', { timeout: 120_000 }, async () => {
  const page = await hold();
  await open(page, 'shapes');
  const seen = new Set<string>();
  const wrong: Record<string, readonly string[]> = {};
  for (let taps = 0; taps < 160; taps += 1) {
    const kind = await kindOf(page);
    const name = `${kind}: ${await page.locator('#training h2').textContent()}`;
    if (!seen.has(name)) {
      seen.add(name);
      const found = await faultsOf(page);
      if (found.length > 0) wrong[name] = found;
    }
    if (kind === 'finished') break;
    await tap(page, nextTap(kind));
  }
  expect(await kindOf(page)).toBe('finished');
  expect(seen.size).toBeGreaterThan(10);
  expect(wrong).toEqual({});
});

test('a buzz or a sound comes in the frame in which the clock changes its figures and its shape', async () => {
  const page = await hold();
  await page.addInitScript(() => {
    const felt: string[] = [];
    Object.assign(window, { felt });
    Object.defineProperty(navigator, 'vibrate', {
      value: () => {
        const clock = document.querySelector('#training .clock');
        felt.push(`${clock?.textContent} ${clock?.className}`);
        return true;
      },
    });
  });
  await open(page, 'first');
  await tap(page, says(WORDS.thisPhone));
  await tap(page, says(WORDS.vibration));
  await tap(page, '#training-main');
  await untilSet(page);
  await tap(page, '#training-main');
  expect(await kindOf(page)).toContain('resting');
  await page.clock.runFor(200_000);
  const felt = await page.evaluate(() => (window as unknown as { readonly felt: readonly string[] }).felt);
  expect(felt).toEqual(['0:00 clock over']);
});

test('a hold counts the seconds to get into place, then its own; its start is taken back; each change is felt as it is seen', async () => {
  const page = await hold();
  await page.addInitScript(() => {
    const felt: string[] = [];
    Object.assign(window, { felt });
    Object.defineProperty(navigator, 'vibrate', {
      value: () => felt.push(`${document.querySelector('#training .clock')?.textContent}`) > 0,
    });
  });
  await open(page, 'shapes');
  await tap(page, says(WORDS.thisPhone));
  await tap(page, says(WORDS.vibration));
  await tap(page, '#training-main');
  const heading = (): Promise<string | null> => page.locator('#training h2').textContent();
  for (let taps = 0; taps < 120; taps += 1) {
    const main = await page.locator('#training-main').allTextContents();
    if ((await kindOf(page)) === 'set' && main[0] === WORDS.start && /\d s$/.test(await dose(page))) break;
    await tap(page, nextTap(await kindOf(page)));
  }
  const name = await heading();
  const seconds = Number(/(\d+) s$/.exec(await dose(page))?.[1]);
  expect(seconds).toBeGreaterThan(0);
  const clock = (): Promise<string | null> => page.locator('#training .clock').textContent();
  const told = (): Promise<string | null> => page.locator('#training-says').textContent();
  await tap(page, '#training-main');
  expect(await read(page)).toContain(WORDS.intoPlace);
  expect(await told()).toBe(WORDS.intoPlaceIn(5));
  expect(await clock()).toMatch(/^0:0[45]$/);
  expect(await faultsOf(page)).toEqual([]);
  await tap(page, says(WORDS.startAgain));
  expect(await page.locator('#training .clock').count()).toBe(0);
  expect(await page.locator('#training-main').textContent()).toBe(WORDS.start);
  await tap(page, '#training-main');
  await page.evaluate(() =>
    Object.assign(window, { felt: Object.assign((window as unknown as { felt: string[] }).felt, { length: 0 }) }),
  );
  await page.clock.runFor(5000);
  expect(await read(page)).not.toContain(WORDS.intoPlace);
  expect(await told()).toBe(WORDS.workNow);
  expect(await faultsOf(page)).toEqual([]);
  await page.clock.runFor(1000 * seconds);
  expect(await clock()).toBe('0:00');
  expect(await told()).toBe(WORDS.timeUp);
  expect(await page.locator('#training .next-line').textContent()).toBe(WORDS.timeUp);
  expect(await faultsOf(page)).toEqual([]);
  const whole = `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
  expect(await page.evaluate(() => (window as unknown as { felt: string[] }).felt)).toEqual([whole, '0:00']);
  expect(await heading()).toBe(name);
});

test('with less motion nothing moves; with more contrast every line is heavier', async () => {
  const page = await hold();
  await open(page, 'first');
  const widths = (): Promise<readonly string[]> =>
    page.evaluate(() =>
      ['.tap', '.bar'].map((one) => {
        const element = document.querySelector(`#training ${one}`);
        return element ? getComputedStyle(element).borderTopWidth : '';
      }),
    );
  const plain = await widths();
  await page.emulateMedia({ contrast: 'more', reducedMotion: 'reduce' });
  expect((await widths()).map(Number.parseFloat).every((width, i) => width > Number.parseFloat(plain[i] ?? ''))).toBe(
    true,
  );
  await untilSet(page);
  await tap(page, '#training-main');
  const moving = await page.evaluate(
    () => document.getAnimations().filter(({ playState }) => playState === 'running').length,
  );
  expect(moving).toBe(0);
  expect(await faultsOf(page)).toEqual([]);
});
