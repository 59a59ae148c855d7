/**
 * Pages made from hostile strings, opened in Chromium with the policy switched off, so that nothing but how they are
 * written keeps the strings from running: nothing runs, nothing is asked of another host, nothing pops up. Library, search,
 * booklets, training screens, sealed booklet, partner's page, desk and hand-over.
 */
import type { Browser, BrowserContext } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { webSources } from '../../src/app/web-sources.js';
import { newKey, writeLink } from '../../src/publish/seal-booklet.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import type { ShellParts } from '../../src/web/shell-parts.js';
import { runs } from '../deep.js';
import { HOSTILE, inBundles, inTurn } from '../publish/hostile-strings.js';
import { fillStudios, isWrong, readPages } from '../publish/hostile-studio.js';
import { filesOf, type Made, photographSaid } from './every-page.js';
import { openBrowser } from './phone.js';
import { type Served, serveFolder } from './serve-folder.js';
import { openSnare, type Snare } from './snare.js';
import { kindOf, nextTap, tapOnce, toTraining } from './train-page.js';

/** Studios, each with other strings in the same fields. */
const STUDIOS = runs(2, 4);
const LONGEST = 4000;
/** Of what one studio's strings are laid together in where few texts are wanted. */
const BUNDLES = 6;
/** Enough for a whole session. */
const TAPS = 24;
// biome-ignore lint/suspicious/noControlCharactersInRegex: no page takes these, in any field
const NO_TEXT = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]/;
const strings = HOSTILE.filter((text) => text.length < LONGEST && !NO_TEXT.test(text));
const studios = fillStudios(strings, STUDIOS);

let browser: Browser;
let parts: ShellParts;
let context: BrowserContext;
const served: Served[] = [];
beforeAll(async () => {
  browser = await openBrowser();
  parts = await prepareShell(webSources());
});
afterAll(async () => browser?.close());
beforeEach(async () => {
  context = await browser.newContext({ bypassCSP: true, hasTouch: true });
});
afterEach(async () => {
  await context.close();
  for (const one of served.splice(0)) await one.close();
});

async function snareAt(
  files: ReadonlyMap<string, Uint8Array>,
): Promise<{ readonly snare: Snare; readonly home: string }> {
  const one = await serveFolder(files, '/s/');
  served.push(one);
  return { snare: await openSnare(context, one.address), home: one.address };
}

test('every string that a page takes as text stands in one of the studios', () => {
  const shown = studios.flatMap((studio) => studio.strings).join('\n');
  expect(strings.filter((text) => !shown.includes(text))).toEqual([]);
});

test('the snare itself is quick: a page that does run one of them is caught', async () => {
  const page = new TextEncoder().encode('<!doctype html><img src=x onerror=struck(1)>');
  const { snare, home } = await snareAt(new Map([['a.html', page]]));
  await snare.visit(`${home}a.html`);
  await expect.poll(() => snare.strikes).toEqual(expect.arrayContaining(['a.html: ran']));
});

describe.each(studios.map(({ pages }, turn) => [turn, pages] as const))('studio %i', (turn, pages) => {
  const key = newKey();
  let made: Made;
  beforeAll(async () => {
    const { value, problems } = readPages(pages);
    expect(problems.filter(isWrong)).toEqual([]);
    const own = strings.filter((_, at) => at % STUDIOS === turn);
    const { exercises } = value.library;
    // One is drawn; of the others there is a picture each.
    const taken = exercises.filter(({ poses }) => poses.length === 0);
    expect(taken.length).toBeLessThan(exercises.length);
    const said = inBundles(own, taken.length);
    made = await filesOf(value, parts, key, {
      photographs: new Map(taken.map(({ id }, at) => [id, photographSaid(said[at] ?? '')])),
      words: inTurn(inBundles(own, BUNDLES)),
    });
  });

  test('in none of its pages does anything run', async () => {
    // They are there, and shown as text.
    const all = [...made.files.values()].map((bytes) => new TextDecoder().decode(bytes)).join('');
    expect(all).toContain('struck(1)');
    const { snare, home } = await snareAt(made.files);
    const paths = [...made.files.keys()].filter((path) => path.endsWith('.html') && !path.startsWith('sealed/'));
    for (const kind of [
      'index',
      '404',
      'exercises/',
      'programmes/',
      'booklet.html',
      'booklet-next',
      'booklet-withdrawn',
      'partner/partner',
      'desk/',
      'hand-over/',
    ]) {
      expect([kind, paths.some((path) => path.includes(kind))]).toEqual([kind, true]);
    }
    for (const path of paths) await snare.visit(home + path);
    expect(snare.strikes).toEqual([]);
  }, 300_000);

  test('nor on the training screens', async () => {
    const { snare, home } = await snareAt(made.files);
    const { page } = snare;
    await page.clock.install({ time: new Date(`${made.starts}T18:00:00`) });
    await page.goto(`${home}booklet.html#now`);
    await toTraining(page);
    const met = new Set<string>();
    let written = '';
    for (let tap = 0; tap < TAPS; tap += 1) {
      const kind = await kindOf(page);
      met.add(kind);
      if (kind === 'set') written += (await page.locator('#training').textContent()) ?? '';
      await snare.look(kind);
      if (kind === 'finished') break;
      await tapOnce(page, nextTap(kind));
      await page.clock.runFor(90_000);
    }
    expect([...met]).toEqual(expect.arrayContaining(['home', 'question', 'set', 'set resting', 'finished']));
    expect(written).toContain('struck(1)');
    expect(snare.strikes).toEqual([]);
  }, 300_000);

  test('nor in a sealed booklet that was opened', async () => {
    const { snare, home } = await snareAt(made.files);
    await snare.visit(writeLink(`${home}sealed/index.html`, key));
    await snare.page.locator('.opening [value=once]').click();
    await snare.page.waitForSelector('.book.ready');
    await snare.look('opened');
    expect(await snare.page.content()).toContain('struck(1)');
    expect(snare.strikes).toEqual([]);
  });

  test('nor in what the search finds, whatever is typed', async () => {
    const { snare, home } = await snareAt(made.files);
    await snare.visit(`${home}index.html`);
    const { page } = snare;
    await page.fill('#look-for', 'squat');
    await page.waitForSelector('.found li');
    for (const typed of strings.filter((_, at) => at % STUDIOS === turn)) {
      await page.fill('#look-for', typed);
      await snare.look(`typed ${typed}`);
    }
    expect(snare.strikes).toEqual([]);
  });
});
