/**
 * A set as a Norwegian client trains it: every word of the screens in the second language, the exercise's own marked as in
 * the first; and the load in another unit beside its own, where the client asks for it.
 */
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { webSources } from '../../src/app/web-sources.js';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import { renderBookletFile } from '../../src/web/render-booklet.js';
import { client, library } from '../fixtures/library.js';
import { plan } from '../fixtures/plan.js';
import { holdPhone, listenTo, openBrowser } from './phone.js';
import { tap as tapOn } from './train-page.js';

let browser: Browser;
let folder: string;
let page: Page;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'training-nb-'));
  // A caution is said in the coach’s own words, which nobody translates.
  const booklet = composeBooklet({ library, client: { ...client, language: 'nb', cautions: [] }, plan });
  const parts = await prepareShell(webSources());
  await writeFile(join(folder, 'hefte.html'), renderBookletFile(booklet, clientPlanOf(plan), parts));
  browser = await openBrowser();
  const context = await holdPhone(browser);
  page = await context.newPage();
});
afterAll(async () => {
  await browser?.close();
  await rm(folder, { recursive: true, force: true });
});

const tap = (name: string | RegExp): Promise<void> =>
  tapOn(page, page.locator('#training').getByRole('button', { name, exact: true }));

const heading = (text: string) => page.locator('#training h2', { hasText: text }).waitFor();

/** Words that a sentence in English hardly does without, outside what says that it is English, and outside names. */
const english = () =>
  page.evaluate(() => {
    const copy = document.querySelector('#training')?.cloneNode(true);
    if (!(copy instanceof Element)) return ['no screen'];
    for (const own of copy.querySelectorAll('[lang|="en"]')) own.remove();
    const words = /\b(the|your|you|of|with|each|is|this|not|set|sets|rest|leave|today|done|mark|from|back)\b/giu;
    return (copy.textContent ?? '').match(words) ?? [];
  });

test('from the way in to the rest after a set, every word is Norwegian, and what is said aloud too', async () => {
  const heard = listenTo(page);
  await page.clock.install({ time: new Date('2027-01-04T09:00:00') });
  await page.goto(`${pathToFileURL(join(folder, 'hefte.html')).href}#now`);
  await page.locator('#training h2').waitFor();
  expect(await page.evaluate(() => document.documentElement.lang)).toBe('nb');
  expect(await english()).toEqual([]);

  await tap('Denne telefonen');
  expect(await english()).toEqual([]);
  await tap('I pund');
  await tap('Tilbake');
  await tap(/^Start økt/);
  await heading('Hvordan er dagen?');
  expect(await english()).toEqual([]);
  await tap('Som vanlig');
  await heading('Oppvarming');
  expect(await english()).toEqual([]);
  await tap('Jeg er varm');

  const set = page.locator('#training .training-sheet.set');
  await set.waitFor();
  expect(await set.locator('h2 bdi').getAttribute('lang')).toBe('en-GB');
  expect((await set.locator('.heard').first().textContent())?.replaceAll('\u00a0', ' ')).toMatch(
    /^Øvelse 1 av \d+\. \d+ kilo, omtrent \d+ pund, \d+ repetisjoner\. Lettere, til oppvarming\.$/,
  );
  expect((await set.locator('.load').textContent())?.replaceAll('\u00a0', ' ')).toMatch(/^\d+ kg \([\d,]+ lb\) × \d+$/);
  expect(await english()).toEqual([]);

  await tap('Settet er gjort');
  const says = page.locator('#training-says:not(:empty)');
  // It is said once the mark is kept.
  await says.waitFor({ state: 'attached' });
  expect(await says.textContent()).toMatch(/^Sett 1 er ført opp\.( Pause, \d+ sekunder\.)?$/);
  // What is tapped is told apart from the second of two by when it was shown.
  await page.clock.runFor(700);
  await tap('Noe gjør vondt');
  await heading('Er det noe av dette?');
  expect(await english()).toEqual([]);
  expect(heard.complaints).toEqual([]);
});
