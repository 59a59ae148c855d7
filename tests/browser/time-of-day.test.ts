/**
 * A phone's own time of day, and a page that nobody sees: a rest in a tab behind another, in a page that was frozen, and through
 * a clock put forward or back. Rests are told by the moment they are over, so that none of it makes one longer or shorter than
 * it was; where that moment can no longer be known, no clock is shown in its place.
 */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { CDPSession, Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { webSources } from '../../src/app/web-sources.js';
import type { ClientPlan } from '../../src/model/client-plan.js';
import { bookletId } from '../../src/model/identity.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import { renderBookletFile } from '../../src/web/render-booklet.js';
import { englishPhone as WORDS } from '../../src/words/english-phone.js';
import { everyShapeBooklet, everyShapeSent } from './every-shape-booklet.js';
import { changeItems } from './parts-of-plan.js';
import { phoneInHand } from './phone-in-hand.js';
import { BOOKLET, eventsIn, kindOf, nextTap, tapOnce, toTraining } from './train-page.js';

const START = new Date('2027-01-04T18:00:00');
const REST = 90;
/** As long as a test can wait for it by the machine's own clock. */
const SHORT_REST = 3;
const HOUR = 3_600_000;
const phone = phoneInHand('time');

/** One exercise of two sets, with so long a rest between them. */
const resting = (restSeconds: number): ClientPlan => ({
  ...changeItems(everyShapeSent, (item) => (item.row === 'step-up' ? { ...item, restSeconds } : null)),
  bookletId: bookletId(BOOKLET),
});

beforeAll(async () => {
  const parts = await prepareShell(webSources());
  await writeFile(join(phone.folder, 'plain.html'), renderBookletFile(everyShapeBooklet, resting(REST), parts));
  await writeFile(join(phone.folder, 'short.html'), renderBookletFile(everyShapeBooklet, resting(SHORT_REST), parts));
});

const clockOf = (page: Page): Promise<string | null> => page.locator('#training .clock').textContent();
const told = (page: Page): Promise<string | null> => page.locator('#training-says').textContent();
/** Sets marked, in order. */
const marked = async (page: Page): Promise<number> =>
  (await eventsIn(page)).filter(({ kind }) => kind === 'set').length;

/** At rest after the first set, half a minute into it. */
async function halfwayThroughRest(): Promise<Page> {
  const context = await phone.hold();
  const page = await context.newPage();
  await page.clock.install({ time: START });
  await page.goto(phone.addressOf('plain.html'));
  await toTraining(page);
  for (let taps = 0; taps < 8 && !(await kindOf(page)).includes('resting'); taps += 1) {
    await tapOnce(page, nextTap(await kindOf(page)));
    await page.clock.runFor(700);
  }
  await page.clock.runFor(30_000);
  expect(await clockOf(page)).toMatch(/^0:5\d$|^1:00$/);
  return page;
}
const now = (page: Page): Promise<number> => page.evaluate(() => Date.now());

describe('a clock that is put right', () => {
  const put = async (page: Page, by: number): Promise<void> => {
    await page.clock.setSystemTime((await now(page)) + by);
    await page.clock.runFor(500);
  };
  /** On to the next set, and marked: the rest after it is a whole one. */
  async function goesOn(page: Page): Promise<void> {
    expect(await page.locator('#training-main').textContent()).toMatch(/2/);
    const before = await marked(page);
    await page.clock.runFor(700);
    if (await page.locator('#training .resting').count()) {
      await tapOnce(page, '#training-main');
      await page.clock.runFor(700);
    }
    await tapOnce(page, '#training-main');
    expect(await marked(page)).toBe(before + 1);
  }

  test('forward by an hour: the rest is over and said so once, and one goes on', async () => {
    const page = await halfwayThroughRest();
    await put(page, HOUR);
    expect(await clockOf(page)).toBe('0:00');
    expect(await told(page)).toBe(WORDS.restOverFor(2));
    await goesOn(page);
  });

  test('forward by some seconds: so much less is left', async () => {
    const page = await halfwayThroughRest();
    await put(page, 20_000);
    expect(await clockOf(page)).toMatch(/^0:3\d$|^0:40$/);
    expect(await told(page)).not.toBe(WORDS.restOverFor(2));
  });

  test('back by an hour: no clock counts down what nobody can know, and one goes on', async () => {
    const page = await halfwayThroughRest();
    await put(page, -HOUR);
    expect(await page.locator('#training .clock').count()).toBe(0);
    expect(await kindOf(page)).toBe('set');
    await goesOn(page);
  });

  test('back by some seconds: never more than a whole rest is left', async () => {
    const page = await halfwayThroughRest();
    await put(page, -45_000);
    const [minutes = 0, seconds = 0] = ((await clockOf(page)) ?? '').split(':').map(Number);
    expect(60 * minutes + seconds).toBeLessThanOrEqual(REST);
    expect(60 * minutes + seconds).toBeGreaterThan(REST - 5);
    await page.clock.runFor(1000 * REST);
    expect(await clockOf(page)).toBe('0:00');
    expect(await told(page)).toBe(WORDS.restOverFor(2));
    await goesOn(page);
  });

  test('forward and back again: the rest is the one it was', async () => {
    const page = await halfwayThroughRest();
    const over = await page.locator('#training .clock').getAttribute('data-over');
    await put(page, HOUR);
    await put(page, -HOUR);
    expect(await page.locator('#training .clock').getAttribute('data-over')).toBe(over);
    await goesOn(page);
  });
});

describe('a page that nobody sees', () => {
  /** A browser that is driven holds every page for seen: it is told so in its place. */
  const hide = (page: Page, hidden: boolean): Promise<void> =>
    page.evaluate(
      (state) => {
        Object.defineProperty(document, 'visibilityState', { value: state, configurable: true });
        document.dispatchEvent(new Event('visibilitychange'));
      },
      hidden ? 'hidden' : 'visible',
    );

  test('behind another tab a rest is over in its time, and said', async () => {
    const page = await halfwayThroughRest();
    await hide(page, true);
    await page.clock.runFor(1000 * REST);
    expect(await clockOf(page)).toBe('0:00');
    expect(await told(page)).toBe(WORDS.restOverFor(2));
  });

  test('where nothing runs behind another tab, it is said as soon as it is seen again', async () => {
    const page = await halfwayThroughRest();
    await hide(page, true);
    await page.clock.setSystemTime((await now(page)) + 300_000);
    expect(await told(page)).not.toBe(WORDS.restOverFor(2));
    await hide(page, false);
    await page.waitForFunction(() => document.querySelector('#training .clock')?.textContent === '0:00');
    expect(await told(page)).toBe(WORDS.restOverFor(2));
  });

  /** At rest, by the machine's own clock. */
  async function atRest(): Promise<{ readonly page: Page; readonly session: CDPSession }> {
    const context = await phone.hold();
    const page = await context.newPage();
    await page.goto(phone.addressOf('short.html'));
    await toTraining(page);
    for (let taps = 0; taps < 8 && !(await kindOf(page)).includes('resting'); taps += 1) {
      await tapOnce(page, nextTap(await kindOf(page)));
      // Nearer together they would be one tap.
      await page.waitForTimeout(650);
    }
    expect(await kindOf(page)).toContain('resting');
    return { page, session: await page.context().newCDPSession(page) };
  }
  test('frozen, as a phone freezes what lies in a pocket, it is over as soon as it is seen again', async () => {
    const { page, session } = await atRest();
    const before = await clockOf(page);
    await session.send('Page.setWebLifecycleState', { state: 'frozen' });
    await new Promise((done) => setTimeout(done, 1000 * SHORT_REST + 1200));
    await session.send('Page.setWebLifecycleState', { state: 'active' });
    await page.waitForFunction((was) => document.querySelector('#training .clock')?.textContent !== was, before);
    expect(await clockOf(page)).toBe('0:00');
    expect(await told(page)).toBe(WORDS.restOverFor(2));
  });
});
