/**
 * Clocks that lead a set: how they go is said before they are begun; whatever is felt or heard of them changes figures and
 * shape in its own frame; and what has begun or run out is said once to who does not look.
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
import { englishSets } from '../../src/words/english-sets.js';
import { everyShapeBooklet, everyShapeSent } from './every-shape-booklet.js';
import { changeItems } from './parts-of-plan.js';
import { phoneInHand } from './phone-in-hand.js';
import { faultsOf } from './screen-rules.js';
import { kindOf, nextTap, says, tap, toTraining } from './train-page.js';

const START = new Date('2027-01-04T18:00:00');
const EVERY = 60;
const HOLD = 25;
const WORK = 40;
const PAUSE = 20;
const phone = phoneInHand('clocks');

/** The plan of every shape with one group of rows alone. */
const only = (row: string): ClientPlan =>
  changeItems(everyShapeSent, (item, { kind, items }) =>
    item.row === row || (kind === 'circuit' && items.some((other) => other.row === row)) ? item : null,
  );

beforeAll(async () => {
  const parts = await prepareShell(webSources());
  for (const row of ['minutes', 'side-plank', 'band-row'])
    await writeFile(join(phone.folder, `${row}.html`), renderBookletFile(everyShapeBooklet, only(row), parts));
});

interface Felt {
  readonly before: readonly [text: string, shape: string];
  readonly after: readonly [text: string, shape: string];
}

/** At each buzz: the figures that stood just before it, and those that stand with it. */
function feel(): void {
  const look = (): readonly [string, string] => {
    const clock = document.querySelector('#training .clock');
    return [clock?.textContent ?? '', clock?.className ?? ''];
  };
  const felt: object[] = [];
  let before = look();
  setInterval(() => {
    before = look();
  }, 50);
  Object.assign(window, { felt });
  Object.defineProperty(navigator, 'vibrate', { value: () => felt.push({ before, after: look() }) > 0 });
}
const felt = (page: Page): Promise<readonly Felt[]> =>
  page.evaluate(() => (window as unknown as { readonly felt: Felt[] }).felt.splice(0));

/** Opened at the first set, with whatever is felt turned on. */
async function open(row: string, ...settings: readonly string[]): Promise<Page> {
  const context = await phone.hold();
  const page = await context.newPage();
  await page.clock.install({ time: START });
  await page.addInitScript(feel);
  await page.goto(phone.addressOf(`${row}.html`));
  await toTraining(page);
  for (const button of [WORDS.thisPhone, ...settings, WORDS.back]) await tap(page, says(button));
  for (let taps = 0; taps < 6 && (await kindOf(page)) !== 'set'; taps += 1)
    await tap(page, nextTap(await kindOf(page)));
  expect(await page.locator('#training-main').textContent()).toBe(WORDS.start);
  return page;
}

const read = async (page: Page): Promise<string> =>
  ((await page.locator('#training .training-page').textContent()) ?? '').replaceAll('\u00a0', ' ');
const told = (page: Page): Promise<string | null> => page.locator('#training-says').textContent();
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

const unlike = ({ before, after }: Felt): boolean => before[0] !== after[0] && before[1] !== after[1];

test('a set at every signal: how it goes is said before; each signal changes figures and shape, and says which set begins', async () => {
  const page = await open('minutes', WORDS.vibration);
  const how = plain(englishSets.signal(EVERY));
  expect(await read(page)).toContain(how);
  expect(await faultsOf(page)).toEqual([]);
  await tap(page, '#training-main');
  expect(await read(page)).not.toContain(how);
  await page.clock.runFor(10_000);
  await tap(page, '#training-main');
  expect(await told(page)).toBe(WORDS.markedOnly(1));
  await page.clock.runFor(1000 * (EVERY - 11));
  expect(await felt(page)).toEqual([{ before: ['0:01', 'clock'], after: ['1:00', 'clock struck'] }]);
  expect(await told(page)).toBe(WORDS.startSet(2));
  await page.clock.runFor(4000);
  expect(await page.locator('#training .clock').getAttribute('class')).toBe('clock');
});

test('every beat of a hold, and of the time between two signals, changes figures and shape', async () => {
  for (const [row, lead, seconds] of [
    ['side-plank', 5, HOLD],
    ['minutes', 0, EVERY],
  ] as const) {
    const page = await open(row, WORDS.vibration, WORDS.tempo);
    await tap(page, '#training-main');
    await page.clock.runFor(1000 * (lead + seconds));
    const all = await felt(page);
    // A beat for each second that has gone by, a signal at the end, and one where the hold began.
    expect(all).toHaveLength(seconds + (lead > 0 ? 1 : 0));
    expect(all.filter((one) => !unlike(one))).toEqual([]);
  }
});

test('work and rest by the clock: how it goes is said before, and that time is up is seen and said', async () => {
  const page = await open('band-row', WORDS.vibration);
  expect(await read(page)).toContain(plain(englishSets.workAndPause(WORK, PAUSE, true)));
  expect(await faultsOf(page)).toEqual([]);
  await tap(page, '#training-main');
  expect(await read(page)).not.toContain(WORDS.timeUp);
  await page.clock.runFor(1000 * WORK);
  expect(await felt(page)).toEqual([{ before: ['0:01', 'clock'], after: ['0:00', 'clock over'] }]);
  expect(await told(page)).toBe(WORDS.timeUp);
  expect(await page.locator('#training .next-line').textContent()).toBe(WORDS.timeUp);
  expect(await faultsOf(page)).toEqual([]);
  // The next work begins by itself when the change over is over.
  await tap(page, '#training-main');
  await felt(page);
  await page.clock.runFor(1000 * PAUSE);
  const begun = await felt(page);
  expect(begun.filter((one) => !unlike(one))).toEqual([]);
  expect(begun.map(({ after }) => after)).toEqual([['0:40', 'clock struck']]);
  expect(await told(page)).toBe(WORDS.workNow);
});
