/**
 * What hurts, said where no set is in hand, and what becomes of it: screens that stand only then, in both languages and on the
 * smallest phones, with text at 200 % (WCAG 2.2, 1.4.4) as well.
 */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { beforeAll, expect, test } from 'vitest';
import { webSources } from '../../src/app/web-sources.js';
import type { ClientPlan, ClientSession } from '../../src/model/client-plan.js';
import { readSetKey, setKey } from '../../src/model/identity.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import { renderBookletFile } from '../../src/web/render-booklet.js';
import { englishPhone } from '../../src/words/english-phone.js';
import { norwegianPhone } from '../../src/words/norwegian-phone.js';
import { phoneInHand } from './phone-in-hand.js';
import { faultsOf } from './screen-rules.js';
import { issuedFor, kindOf, nextTap, says, tap, toTraining } from './train-page.js';

const START = Date.parse('2027-01-04T18:00:00');
const DAY = 86_400_000;
const WORDS = { 'en-GB': englishPhone, nb: norwegianPhone } as const;
const phone = phoneInHand('hurts');

/** Its second session is the first exercise of its first one, and nothing else. */
function withThin(plan: ClientPlan): ClientPlan {
  const [first] = plan.weeks[0]?.sessions ?? [];
  const group = first?.groups.find(({ kind }) => kind !== 'warm-up') ?? expect.fail();
  const work = group.items[0] ?? expect.fail();
  const thin = (session: ClientSession): ClientSession => {
    const { occurrence } = session;
    const sets = work.sets.map((set) => {
      const key = readSetKey(set.key);
      return { ...set, key: key === null ? set.key : setKey({ ...key, occurrence }) };
    });
    const around = session.groups.filter(({ kind }) => kind === 'warm-up');
    return { ...session, groups: [...around, { ...group, items: [{ ...work, sets }] }] };
  };
  return {
    ...plan,
    weeks: plan.weeks.map((week) => ({
      ...week,
      sessions: week.sessions.map((one) => (one.occurrence === 2 ? thin(one) : one)),
    })),
  };
}

beforeAll(async () => {
  const { booklet, sent, drawings } = await issuedFor('rowan-ashby');
  const parts = await prepareShell(webSources());
  for (const language of ['en-GB', 'nb'] as const)
    await writeFile(
      join(phone.folder, `${language}.html`),
      renderBookletFile({ ...booklet, language }, withThin(sent), parts, drawings),
    );
});

const title = async (page: Page): Promise<string> => (await page.locator('#training h2').textContent()) ?? '';

async function until(page: Page, stands: () => Promise<boolean>): Promise<void> {
  for (let taps = 0; taps < 80 && !(await stands()); taps += 1) await tap(page, nextTap(await kindOf(page)));
  expect(await stands()).toBe(true);
}

test.each([
  ['en-GB', 360, 592, 'light'],
  ['nb', 320, 568, 'dark'],
] as const)('%s, %i × %i, %s', { timeout: 240_000 }, async (language, width, height, scheme) => {
  const words = WORDS[language];
  const page = await (await phone.hold({ width, scheme })).newPage();
  await page.setViewportSize({ width, height });
  await page.clock.install({ time: START });
  await page.goto(`${phone.addressOf(`${language}.html`)}#now`);
  await toTraining(page);
  const wrong: Record<string, readonly string[]> = {};
  const look = async (name: string): Promise<void> => {
    const found = [...(await faultsOf(page))];
    const buttons = await page
      .locator('#training .bar button, #training .training-page > .answers button')
      .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().top));
    if (Math.min(...buttons) < 0.4 * height) found.push('what is tapped stands too high');
    const over = await page.evaluate(() => {
      const { style } = document.documentElement;
      style.fontSize = '200%';
      const beyond = document.documentElement.scrollWidth - innerWidth;
      style.fontSize = '';
      return beyond;
    });
    if (over > 0) found.push(`at 200 %: ${over} px too wide`);
    if (found.length > 0) wrong[name] = found;
  };
  const hurts = async (degree: string): Promise<void> => {
    for (const answer of [words.somethingHurts, words.noneOfThese, words.parts.neck, degree])
      await tap(page, says(answer));
  };

  // While warming up it is of the session as a whole, and what is taken back leads to the warm-up.
  await until(page, async () => (await title(page)) === words.around['warm-up']);
  await look('warm-up');
  await tap(page, says(words.somethingHurts));
  await tap(page, says(words.back));
  expect(await title(page)).toBe(words.around['warm-up']);
  await hurts('9');
  expect(await title(page)).toBe(words.adviceBefore[0]);
  await tap(page, '#training-main');
  expect(await page.locator('#training .notice').allTextContents()).toContain(words.adviceBefore.join(''));

  // On another day it is said back.
  await page.clock.setSystemTime(START + 2 * DAY);
  await page.goto('about:blank');
  await page.goto(`${phone.addressOf(`${language}.html`)}#now`);
  await toTraining(page);
  await tap(page, '#training-main');
  expect(await title(page)).toBe(words.howIsToday);
  const told = (await page.locator('#training .training-page').textContent()) ?? '';
  expect(told).toContain(words.whatHurts(words.parts.neck, undefined, 9));
  expect(told).toContain(words.hasItGone);
  await look('said back');
  await tap(page, says(words.today['as usual']));

  // At the question after it, an exercise is over: nothing of it can be left out any more.
  await until(page, async () => (await title(page)) === words.howManyMore);
  await look('reserve');
  await hurts('9');
  expect(await title(page)).toBe(words.adviceAfter[0]);
  expect(await page.locator('#training button').allTextContents()).not.toContain(words.take.leave);
  await look('advice');
  await tap(page, '#training-main');
  expect(await title(page)).toBe(words.howManyMore);
  await until(page, async () => (await title(page)) === words.howHard);
  await look('effort');
  await hurts('3');
  await look('advice at the end');
  expect(await page.locator('#training button').allTextContents()).not.toContain(words.take.stop);
  await tap(page, '#training-main');
  expect(await title(page)).toBe(words.howHard);
  await until(page, async () => (await kindOf(page)) === 'finished');

  // Of the next session nothing is left: nobody warms up for it, and it is let be.
  await page.clock.setSystemTime(START + 5 * DAY);
  await page.goto('about:blank');
  await page.goto(`${phone.addressOf(`${language}.html`)}#now`);
  await toTraining(page);
  await tap(page, '#training-main');
  await tap(page, says(words.notSaid));
  expect(await title(page)).toBe(words.nothingLeft);
  await look('let be');
  await tap(page, '#training-main');
  expect(await kindOf(page)).toBe('home');
  expect(wrong).toEqual({});
});
