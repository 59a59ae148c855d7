/**
 * Screens beside the straight way through a session: what hurts, what was otherwise, an easier way, less on a bad day, the
 * phone itself, what is sent. On each of them the rules of axe-core with the stricter contrast, the width, the height of
 * what can be tapped, and the length of what is said.
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
import { phoneInHand } from './phone-in-hand.js';
import { faultsOf } from './screen-rules.js';
import { issuedFor, kindOf, nextTap, says, tap, toTraining } from './train-page.js';

const START = new Date('2027-01-04T18:00:00');
const CALF = WORDS.signs['swollen painful calf'];
const CHEST = WORDS.signs['chest, jaw or arm pain'];
/** Thirty screens under the rules of axe take half a minute, and a busy machine three times that. */
const SLOW = { timeout: 240_000 };
const phone = phoneInHand('beside');
let sent: ClientPlan;

beforeAll(async () => {
  const issued = await issuedFor('rowan-ashby');
  const { booklet, drawings } = issued;
  sent = issued.sent;
  const parts = await prepareShell(webSources());
  await writeFile(join(phone.folder, 'booklet.html'), renderBookletFile(booklet, sent, parts, drawings));
});

async function untilSet(page: Page): Promise<void> {
  for (let taps = 0; taps < 12 && (await kindOf(page)) !== 'set'; taps += 1) {
    await tap(page, nextTap(await kindOf(page)));
  }
  expect(await kindOf(page)).toBe('set');
}

test.each([
  [360, 640, 'light'],
  [320, 568, 'dark'],
] as const)('at %i × %i, %s: nothing is wrong with any screen beside the way', SLOW, async (width, height, scheme) => {
  const context = await phone.hold({ width, scheme });
  const page = await context.newPage();
  await page.setViewportSize({ width, height });
  await page.clock.install({ time: START });
  await page.goto(phone.addressOf('booklet.html'));
  await toTraining(page);
  const found: Record<string, readonly string[]> = {};
  const met = new Set<string>();
  const look = async (): Promise<void> => {
    const title = (await page.locator('#training h2').textContent()) ?? '';
    met.add(title);
    const wrong = await faultsOf(page);
    if (wrong.length > 0) found[title] = wrong;
  };
  const tapAndLook = async (...buttons: readonly string[]): Promise<void> => {
    for (const button of buttons) {
      await tap(page, says(button));
      await look();
    }
  };
  await look();
  await tapAndLook(WORDS.thisPhone, WORDS.back);
  await tap(page, '#training-main');
  await tapAndLook(WORDS.today['not my best'], WORDS.takePlanned);
  await untilSet(page);
  await tapAndLook(WORDS.easierToday);
  // Ways of doing the same exercise stand in the page once, and are said from there.
  const groups = sent.weeks[0]?.sessions[0]?.groups.filter(({ kind }) => kind !== 'warm-up') ?? [];
  const ways =
    groups[0]?.items[0]?.easier.filter(({ exercise }) => exercise?.includes('#')).map(({ say }) => say) ?? [];
  expect(ways.length).toBeGreaterThan(0);
  const offered = await page.locator('#training .answers').first().textContent();
  for (const way of ways) expect(offered).toContain(way);
  await tapAndLook(WORDS.back);
  await tapAndLook(WORDS.somethingHurts, CALF);
  // A doctor the same day; an emergency only with what makes it one.
  const told = await page.locator('#training .training-page').textContent();
  for (const line of WORDS.sameDay) expect(told).toContain(line);
  await tapAndLook(WORDS.slip, CHEST);
  expect(await page.locator('#training .training-page').textContent()).not.toContain(WORDS.sameDay[0]);
  await tapAndLook(WORDS.slip, WORDS.noneOfThese, WORDS.parts.knee, WORDS.side.left);
  // A seven tapped for a one is taken back.
  await tapAndLook('7', WORDS.slip, '1', WORDS.take.gently);
  await tap(page, '#training-main');
  expect(await kindOf(page)).toContain('resting');
  await tap(page, '#training .pair button >> nth=0');
  await look();
  await tapAndLook(WORDS.keepThis, WORDS.somethingHurts, WORDS.noneOfThese, WORDS.parts.hip);
  await tapAndLook(WORDS.bothSides, '9', WORDS.take.leave);
  await tapAndLook(WORDS.stopHere);
  while ((await kindOf(page)) !== 'finished') {
    await tap(page, nextTap(await kindOf(page)));
    await look();
  }
  await tapAndLook(WORDS.send, WORDS.back);
  await tap(page, '#training-main');
  await tapAndLook(WORDS.today['short of time'], WORDS.takeShort);
  await untilSet(page);
  await tap(page, says(WORDS.somethingHurts));
  await tapAndLook(CHEST, WORDS.take.stop);
  expect(await page.locator('#training .notice').first().textContent()).toContain(WORDS.alarmStands[0]);
  for (const title of [WORDS.lessIsFine, WORDS.easierWays, WORDS.anyOfThese, WORDS.stopNow, WORDS.whereHurts])
    expect(met).toContain(title);
  for (const title of [
    WORDS.whichSide,
    WORDS.howMuch,
    WORDS.whatWasDone(1),
    WORDS.howHard,
    WORDS.sendTitle,
    WORDS.thisPhone,
  ])
    expect(met).toContain(title);
  expect(found).toEqual({});
});
