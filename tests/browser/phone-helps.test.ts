/**
 * What a phone is asked for beside showing: a screen that stays on, a beat for slow reps, a promise to keep the marks, loads in
 * another unit. Each as the page asks for it; none of them changes what is kept.
 */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { beforeAll, expect, test } from 'vitest';
import { countAt } from '../../layouts/training/clock.js';
import { webSources } from '../../src/app/web-sources.js';
import { SLOW_LOWERING_SECONDS } from '../../src/engine/rules/slow-lowering-seconds.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import { renderBookletFile } from '../../src/web/render-booklet.js';
import { englishPhone as WORDS } from '../../src/words/english-phone.js';
import { slowed } from './parts-of-plan.js';
import { phoneInHand } from './phone-in-hand.js';
import { faultsOf } from './screen-rules.js';
import { eventsIn, issuedFor, kindOf, nextTap, says, tap, toTraining } from './train-page.js';

const START = new Date('2027-01-04T18:00:00');
const phone = phoneInHand('helps');

beforeAll(async () => {
  const { booklet, sent } = await issuedFor('rowan-ashby');
  const parts = await prepareShell(webSources());
  await writeFile(join(phone.folder, 'plain.html'), renderBookletFile(booklet, sent, parts));
  await writeFile(join(phone.folder, 'slow.html'), renderBookletFile(booklet, slowed(sent), parts));
});

/** `stub` runs in the page before anything of its own. */
async function open(name: 'plain' | 'slow', stub: () => void = () => undefined): Promise<Page> {
  const context = await phone.hold();
  const page = await context.newPage();
  await page.clock.install({ time: START });
  await page.addInitScript(stub);
  await page.goto(phone.addressOf(`${name}.html`));
  await toTraining(page);
  return page;
}

/** Turns settings over, or chooses one, and comes back. */
async function settle(page: Page, ...buttons: readonly string[]): Promise<void> {
  for (const button of [WORDS.thisPhone, ...buttons, WORDS.back]) await tap(page, says(button));
}

async function untilWork(page: Page): Promise<void> {
  const isWork = async (): Promise<boolean> =>
    (await kindOf(page)) === 'set' && !(await page.locator('.set-line').first().textContent())?.includes('warm up');
  for (let taps = 0; taps < 12 && !(await isWork()); taps += 1) await tap(page, nextTap(await kindOf(page)));
  expect(await isWork()).toBe(true);
}

/** What was marked, without when and as which. */
const marksOf = async (page: Page): Promise<readonly object[]> =>
  (await eventsIn(page)).map((event) => ({ ...event, id: '', at: '' }));

test('the screen is asked to stay on through a session, once, again after the page was away, and let go on leaving', async () => {
  const page = await open('plain', () => {
    const locks = { asked: 0, given: 0, latest: { released: false } };
    const request = async () => {
      locks.asked += 1;
      // No phone answers at once.
      await new Promise((done) => setTimeout(done, 300));
      const lock = {
        released: false,
        release: async () => {
          if (!lock.released) locks.given += 1;
          lock.released = true;
        },
      };
      locks.latest = lock;
      return lock;
    };
    Object.defineProperty(navigator, 'wakeLock', { value: { request } });
    Object.assign(window, { locks });
  });
  const locks = (): Promise<{ readonly asked: number; readonly given: number }> =>
    page.evaluate(() => {
      const { asked, given } = (window as unknown as { locks: { asked: number; given: number } }).locks;
      return { asked, given };
    });
  const turnTo = async (hash: string): Promise<void> => {
    await page.evaluate((to) => {
      location.hash = to;
    }, hash);
    await page.waitForFunction((to) => document.getElementById('training')?.hidden === (to !== '#now'), hash);
  };
  expect(await locks()).toEqual({ asked: 0, given: 0 });
  await tap(page, '#training-main');
  // From the question before the session on: nobody warms up with the phone in hand.
  expect(await kindOf(page)).not.toBe('set');
  expect(await locks()).toEqual({ asked: 1, given: 0 });
  await untilWork(page);
  await tap(page, '#training-main');
  await tap(page, '#training-main');
  expect(await locks()).toEqual({ asked: 1, given: 0 });
  // As a browser does with a page that goes to the back.
  await page.evaluate(() => {
    const { latest } = (window as unknown as { locks: { latest: { released: boolean } } }).locks;
    latest.released = true;
    dispatchEvent(new Event('visibilitychange'));
  });
  await page.clock.runFor(700);
  expect(await locks()).toEqual({ asked: 2, given: 0 });
  await turnTo('#cover');
  await page.clock.runFor(700);
  expect(await locks()).toEqual({ asked: 2, given: 1 });
  // Back and away again while the phone is still thinking: what comes late is given back too.
  await turnTo('#now');
  await turnTo('#cover');
  await page.clock.runFor(700);
  expect(await locks()).toEqual({ asked: 3, given: 2 });
});

test('who wants no lit screen is asked for none', async () => {
  const page = await open('plain', () => {
    Object.assign(window, { asked: 0 });
    const request = () => {
      Object.assign(window, { asked: 1 });
      return Promise.reject(new Error('no'));
    };
    Object.defineProperty(navigator, 'wakeLock', { value: { request } });
  });
  await settle(page, WORDS.awake);
  await untilWork(page);
  expect(await page.evaluate(() => (window as unknown as { asked: number }).asked)).toBe(0);
});

/** Each buzz and each tone, with what stood on the screen at that moment. */
function feel(): void {
  const felt: string[] = [];
  const count = (): string => {
    const shown = document.querySelector('#training .count');
    return `${shown?.textContent} ${shown?.className}`;
  };
  Object.assign(window, { felt });
  Object.defineProperty(navigator, 'vibrate', { value: () => felt.push(`buzz ${count()}`) > 0 });
  const node = { gain: { setValueAtTime: () => undefined, exponentialRampToValueAtTime: () => undefined } };
  const connect = () => ({ connect: () => undefined });
  class Audio {
    state = 'running';
    currentTime = 0;
    createGain() {
      return { ...node, connect };
    }
    createOscillator() {
      return { frequency: { value: 0 }, connect, stop: () => undefined, start: () => felt.push(`tone ${count()}`) };
    }
  }
  Object.assign(window, { AudioContext: Audio });
}
const felt = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => (window as unknown as { readonly felt: string[] }).felt.splice(0));

test('slow reps are counted for who asks: each beat in the frame in which figure and shape change, and the same is kept', async () => {
  const kept: unknown[] = [];
  for (const counts of [false, true]) {
    const page = await open('slow', feel);
    if (counts) await settle(page, WORDS.tempo, WORDS.sound, WORDS.vibration);
    await untilWork(page);
    await felt(page);
    await page.clock.runFor(8000);
    const beats = await felt(page);
    if (counts) {
      const buzzes = beats.filter((one) => one.startsWith('buzz'));
      expect(beats.filter((one) => one.startsWith('tone'))).toEqual(buzzes.map((one) => one.replace('buzz', 'tone')));
      expect(buzzes).toHaveLength(8);
      const numbers = buzzes.map((one) => Number(/\d/.exec(one)?.[0]));
      expect(numbers).toEqual(numbers.map((_, i) => 1 + (((numbers[0] ?? 0) - 1 + i) % SLOW_LOWERING_SECONDS.value)));
      const shapes = buzzes.map((one) => one.replace(/\d /, ''));
      expect(shapes.filter((shape, i) => shape === shapes[i - 1])).toEqual([]);
      expect(buzzes.filter((one) => one.endsWith('struck'))).toEqual(['buzz 1 count struck', 'buzz 1 count struck']);
      expect(await faultsOf(page)).toEqual([]);
    } else {
      expect(beats).toEqual([]);
      expect(await page.locator('#training .count').count()).toBe(0);
    }
    await tap(page, '#training-main');
    // While one rests nothing is counted.
    expect(await page.locator('#training .count').count()).toBe(0);
    await tap(page, '#training-main');
    kept.push(await marksOf(page));
  }
  expect(kept[1]).toEqual(kept[0]);
});

test('with sound and buzz off the count is seen alone; it goes to the length of a slow lowering', async () => {
  const page = await open('slow', feel);
  await settle(page, WORDS.tempo);
  await untilWork(page);
  await page.clock.runFor(4000);
  expect(await felt(page)).toEqual([]);
  expect(await page.locator('#training .count').textContent()).toMatch(/^[1-4]$/);
  const counted = Array.from({ length: 60 }, (_, i) => countAt(1000 * i));
  expect(Math.max(...counted)).toBe(SLOW_LOWERING_SECONDS.value);
});

test('the browser is asked to keep the marks after the first finish, and then no more', async () => {
  const page = await open('plain', () => {
    Object.assign(window, { asked: 0 });
    const persist = () => {
      Object.assign(window, { asked: (window as unknown as { asked: number }).asked + 1 });
      return Promise.resolve(true);
    };
    Object.defineProperty(navigator, 'storage', { value: { persist, persisted: () => Promise.resolve(false) } });
  });
  const asked = (): Promise<number> => page.evaluate(() => (window as unknown as { asked: number }).asked);
  const finish = async (): Promise<void> => {
    await untilWork(page);
    await tap(page, '#training-main');
    await tap(page, says(WORDS.stopHere));
    for (let taps = 0; taps < 12 && (await kindOf(page)) !== 'finished'; taps += 1) {
      await tap(page, nextTap(await kindOf(page)));
    }
    expect(await kindOf(page)).toBe('finished');
  };
  await untilWork(page);
  expect(await asked()).toBe(0);
  await finish();
  expect(await asked()).toBe(1);
  await tap(page, says(WORDS.back));
  await tap(page, says(WORDS.thisPhone));
  expect(await page.locator('#training').textContent()).toContain(WORDS.persisted);
  await tap(page, '#training-main');
  await finish();
  expect(await asked()).toBe(1);
});

test('loads are shown in pounds for who wants that; plan and log stay as they are', async () => {
  const doses: string[] = [];
  const kept: unknown[] = [];
  for (const units of [WORDS.unit['as printed'], WORDS.unit.lb]) {
    const page = await open('plain');
    if (units === WORDS.unit.lb) await settle(page, units);
    const plan = await page.locator('#plan').textContent();
    await untilWork(page);
    doses.push(((await page.locator('#training .load').textContent()) ?? '').replaceAll('\u00a0', ' '));
    const breath = (await page.locator('#training .heard').first().textContent()) ?? '';
    expect(breath.includes('pounds')).toBe(units === WORDS.unit.lb);
    await tap(page, '#training-main');
    kept.push(await marksOf(page));
    expect(await page.locator('#plan').textContent()).toBe(plan);
  }
  const [printed = '', inPounds = ''] = doses;
  const kilograms = Number(/^(\d+) kg × \d+$/.exec(printed)?.[1]);
  // NIST Special Publication 811, appendix B.8: a pound is 0.453 592 37 kg.
  const pounds = Math.round(kilograms / 0.45359237);
  expect(inPounds).toBe(printed.replace(`${kilograms} kg`, `${kilograms} kg (${pounds} lb)`));
  expect(kept[1]).toEqual(kept[0]);
});
