/** What is left out of a page is put back by whatever reads it: the same elements, attributes and texts, node by node. */

import type { Browser } from 'playwright-core';
import { renderToString } from 'preact-render-to-string';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { BookBody } from '../../layouts/book/book.js';
import { bookOf } from '../../layouts/book/leaves.js';
import { shortenMarkup } from '../../src/web/shorten-markup.js';
import { speechOf } from '../../src/words/speech.js';
import { fixtureBooklet, longNamesBooklet } from '../fixtures/booklet.js';
import { hostileBooklet } from '../web/hostile-booklet.js';
import { everyShapeBooklet } from './every-shape-booklet.js';
import { openBrowser } from './phone.js';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser?.close());

/** Whether a browser makes the same of both. */
async function readAlike(whole: string, shorter: string): Promise<boolean> {
  const page = await browser.newPage();
  try {
    return await page.evaluate(
      ([a = '', b = '']) => {
        const bodyOf = (html: string) =>
          new DOMParser().parseFromString(`<!doctype html><title>x</title>${html}`, 'text/html');
        return bodyOf(a).isEqualNode(bodyOf(b));
      },
      [whole, shorter],
    );
  } finally {
    await page.close();
  }
}

test.each([
  ['ordinary', fixtureBooklet],
  ['long names', longNamesBooklet],
  ['every shape', everyShapeBooklet],
  ['hostile', hostileBooklet],
] as const)('%s', async (_, booklet) => {
  const whole = renderToString(BookBody({ book: bookOf(booklet, speechOf(booklet.language).words) }));
  const shorter = shortenMarkup(whole);
  expect(await readAlike(whole, shorter)).toBe(true);
  expect(shorter.length).toBeLessThan(0.97 * whole.length);
});

test('texts and attributes that look like markup stay as they are', async () => {
  const whole =
    '<ul><li title="a > b=&quot;c&quot;">x=&quot;y&quot; &lt;/li&gt;</li></ul><p>one</p><span>two</span><p class="a b" id="c">three</p>';
  expect(await readAlike(whole, shortenMarkup(whole))).toBe(true);
  expect(shortenMarkup(whole)).toContain('<p>one</p><span>');
});

test('what would be read otherwise is told apart', async () => {
  expect(await readAlike('<p>one</p><span>two</span>', '<p>one<span>two</span>')).toBe(false);
});
