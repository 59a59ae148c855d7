/** What is to be done is the largest on the screen of a set, whatever set it is: beside a clock or a count, with any load, in any language. */
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { webSources } from '../../src/app/web-sources.js';
import type { ClientPlan } from '../../src/model/client-plan.js';
import { filePolicy } from '../../src/web/policy.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import { renderPage } from '../../src/web/render-page.js';
import { phoneSpeechOf } from '../fixtures/phone-speech.js';
import { everyShapeSent } from './every-shape-booklet.js';
import { slowed } from './parts-of-plan.js';
import { holdPhone, openBrowser } from './phone.js';
import { rehearsedScreens } from './rehearsed-screens.js';
import { rivalsOf } from './screen-rules.js';

const LANGUAGES = ['en-GB', 'nb'] as const;
let browser: Browser;
let folder: string;

/** Sessions of one name alone: the shapes of both have the same places in their block. */
const only = (session: string): ClientPlan => ({
  ...everyShapeSent,
  weeks: everyShapeSent.weeks.map((week) => ({ ...week, sessions: week.sessions.filter(({ id }) => id === session) })),
});

const PLANS = [only('a'), only('b'), slowed(only('a'))];

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'largest-'));
  const { style } = await prepareShell(webSources());
  for (const language of LANGUAGES) {
    const screens = PLANS.map((plan) => rehearsedScreens(plan, phoneSpeechOf(language)));
    const page = renderPage({
      title: language,
      language,
      direction: 'ltr',
      policy: filePolicy([style], []),
      styles: [style.text],
      styleFiles: [],
      scripts: [],
      body: `<div id="training">${screens.join('')}</div>`,
    });
    await writeFile(join(folder, `${language}.html`), page);
  }
  browser = await openBrowser();
});
afterAll(async () => {
  await browser?.close();
  await rm(folder, { recursive: true, force: true });
});

test.each(LANGUAGES)('%s', async (language) => {
  const context = await holdPhone(browser);
  const page = await context.newPage();
  await page.goto(pathToFileURL(join(folder, `${language}.html`)).href);
  const met = (within: string): Promise<number> => page.locator(`#training .set:not(.resting) ${within}`).count();
  // The comparison is not of nothing: figures of any length, alone and beside a clock or a count.
  expect(await met('.load')).toBeGreaterThan(30);
  for (const kind of ['.load.lesser', '.brief .load', '.long .clock', '.margin .count', '.sided .clock'])
    expect({ kind, met: (await met(kind)) > 0 }).toEqual({ kind, met: true });
  for (const width of [320, 360, 640]) {
    await page.setViewportSize({ width, height: 640 });
    expect(await rivalsOf(page)).toEqual([]);
  }
  await context.close();
});
