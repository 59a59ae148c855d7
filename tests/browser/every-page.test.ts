/** Every kind of page that a small studio comes to, by axe, in the light and in the dark; the rest of it is for the tests of each. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { webSources } from '../../src/app/web-sources.js';
import { newKey, writeLink } from '../../src/publish/seal-booklet.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import { hostPages, readPages } from '../publish/hostile-studio.js';
import { axeFaults } from './axe.js';
import { filesOf, KINDS, type Made, onePhotograph } from './every-page.js';
import { holdPhone, openBrowser } from './phone.js';
import { type Served, serveFolder } from './serve-folder.js';

const key = newKey();
let browser: Browser;
let served: Served;
let made: Made;

beforeAll(async () => {
  made = await filesOf(readPages(hostPages()).value, await prepareShell(webSources()), key, {
    photographs: onePhotograph,
  });
  served = await serveFolder(made.files, '/s/');
  browser = await openBrowser();
});
afterAll(async () => {
  await browser?.close();
  await served?.close();
});

test.each(['light', 'dark'] as const)('one page of each kind, and a sealed one that was opened: %s', async (scheme) => {
  const context = await holdPhone(browser, { scheme });
  // In the dark the colours alone are others.
  const sought = scheme === 'dark' ? { rules: ['color-contrast'] } : {};
  const page = await context.newPage();
  const paths = KINDS.map(
    (kind) => [...made.files.keys()].find((path) => path.endsWith('.html') && path.includes(kind)) ?? kind,
  );
  // What is sealed is looked at below as it is shown, leaf by leaf.
  for (const path of [...paths.filter((one) => !one.startsWith('opened/')), 'exercises/goblet-squat.html']) {
    await page.goto(served.address + path);
    expect([path, await axeFaults(page, sought)]).toEqual([path, []]);
  }
  await page.goto(writeLink(`${served.address}sealed/index.html`, key));
  await page.locator('.opening [value=once]').click();
  await page.waitForSelector('.book.ready');
  expect(await axeFaults(page, sought)).toEqual([]);
  await context.close();
});
