/**
 * Pages made from hostile strings, opened in Chromium with the policy switched off, so that nothing but how they are
 * written keeps the strings from running: nothing runs, nothing is asked of another host, nothing pops up.
 */
import type { Browser, BrowserContext } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { webSources } from '../../src/app/web-sources.js';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import { composeHandOver } from '../../src/booklet/compose-hand-over.js';
import { linkLibrary, planBlock } from '../../src/engine/plan-block.js';
import { listRulebook } from '../../src/engine/rulebook.js';
import { dayOfIso } from '../../src/model/day.js';
import type { Edition } from '../../src/model/edition.js';
import type { HandOver } from '../../src/model/hand-over.js';
import { publicPartOf } from '../../src/model/public-library.js';
import type { Content } from '../../src/model/studio.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { deskPages } from '../../src/web/desk/render-desk.js';
import { libraryPages } from '../../src/web/library/render-library.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import { renderBookletFile } from '../../src/web/render-booklet.js';
import { renderPartner } from '../../src/web/render-partner.js';
import type { ShellParts } from '../../src/web/shell-parts.js';
import { sayPlan } from '../../src/words/say-plan.js';
import { sayProblem } from '../../src/words/say-problem.js';
import { ASKED_AWAY, HOSTILE } from '../publish/hostile-strings.js';
import { fieldsOf, hostPages, isWrong, type Pages, put, readPages } from '../publish/hostile-studio.js';
import { openBrowser } from './phone.js';
import { type Served, serveFolder } from './serve-folder.js';

const TODAY = dayOfIso('2026-11-24');
/** Studios, each with other strings in the same fields. */
const STUDIOS = 5;
const LONGEST = 4000;

let browser: Browser;
let parts: ShellParts;
beforeAll(async () => {
  browser = await openBrowser();
  parts = await prepareShell(webSources());
});
afterAll(async () => browser?.close());

/** Every field that takes one of the strings has one, and the studio can still be planned and drawn. */
function filled(turn: number): { readonly pages: Pages; readonly strings: readonly string[] } {
  const candidates = HOSTILE.filter((text) => text.length < LONGEST);
  let pages = hostPages();
  const strings: string[] = [];
  // From the end, so that a field before it stays where it is.
  for (const [index, field] of [...fieldsOf(pages)].reverse().entries()) {
    const hostile = candidates[(index * STUDIOS + turn) % candidates.length] ?? '';
    const changed = put(pages, field, hostile, false);
    if (readPages(changed).problems.some(isWrong)) continue;
    pages = changed;
    strings.push(hostile);
  }
  return { pages, strings };
}

async function filesOf(content: Content): Promise<Map<string, Uint8Array>> {
  const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);
  const { library, clients } = content;
  const files = new Map<string, Uint8Array>();
  for (const { path, render } of await libraryPages({ library: publicPartOf(library), rulebook: listRulebook([]) })) {
    files.set(path, utf8(render()));
  }
  const [client] = clients;
  if (client === undefined) throw new Error('nobody is in the studio');
  if (TODAY === undefined) throw new Error('the day is none');
  const made = planBlock({ library, client, today: TODAY, edition: 1, linked: linkLibrary(library.exercises) });
  expect(made.problems.filter(isWrong)).toEqual([]);
  if (made.value === null) throw new Error('nothing was planned');
  const plan = sayPlan(made.value, library.studio.language);
  const booklet = composeBooklet({ library, client, plan });
  files.set('booklet.html', utf8(renderBookletFile(booklet, clientPlanOf(plan), parts)));
  for (const { path, bytes } of renderPartner(booklet)) files.set(`partner/${path}`, bytes);
  const edition: Pick<Edition, 'n' | 'from' | 'plan'> = { n: 1, from: plan.starts, plan };
  const of = { studio: library.studio, client, booklet, edition: edition as Edition };
  const handOvers = new Map<string, HandOver>([
    [client.id, composeHandOver(of, { by: 'both', link: 'https://example.org/#open', words: HOSTILE[3] ?? '' })],
  ]);
  for (const { path, render } of deskPages({
    library,
    clients,
    plans: [plan],
    problems: made.problems,
    handOvers,
    sayProblem,
  })) {
    files.set(`desk/${path}`, utf8(render()));
  }
  return files;
}

/** What a page did that none may do. */
async function strikesOf(
  context: BrowserContext,
  served: Served,
  paths: readonly string[],
): Promise<readonly string[]> {
  const strikes: string[] = [];
  const page = await context.newPage();
  let at = '';
  await page.exposeFunction('struck', () => strikes.push(`${at}: ran`));
  page.on('dialog', (dialog) => {
    strikes.push(`${at}: said ${dialog.message()}`);
    void dialog.dismiss();
  });
  page.on('request', (request) => {
    if (request.url().includes(ASKED_AWAY)) strikes.push(`${at}: asked ${request.url()}`);
  });
  page.on('framenavigated', (frame) => {
    if (frame === page.mainFrame() && !frame.url().startsWith(served.address)) strikes.push(`${at}: left`);
  });
  for (const path of paths) {
    at = path;
    await page.goto(served.address + path);
    const odd = await page.evaluate(() => {
      const all = [...document.querySelectorAll('*')];
      const bad = all.filter(
        (one) =>
          [...one.attributes].some(({ name }) => name.startsWith('on')) ||
          /^(?:iframe|object|embed|base|plaintext|xmp|video|math)$/i.test(one.tagName) ||
          /^\s*(?:javascript|vbscript|data:text)/i.test(one.getAttribute('href') ?? '') ||
          one.hasAttribute('action') ||
          (one.hasAttribute('src') && /away\.invalid/.test(one.getAttribute('src') ?? '')),
      );
      // What only a finger or a pointer would set off is set off.
      for (const one of all) {
        for (const kind of ['pointerover', 'focus', 'toggle', 'error', 'load']) one.dispatchEvent(new Event(kind));
      }
      return bad.map((one) => one.outerHTML.slice(0, 120));
    });
    strikes.push(...odd.map((html) => `${path}: carries ${html}`));
  }
  await page.close();
  return strikes;
}

test('the snare itself is quick: a page that does run one of them is caught', async () => {
  const context = await browser.newContext({ bypassCSP: true });
  const served = await serveFolder(
    new Map([['a.html', new TextEncoder().encode('<!doctype html><img src=x onerror=struck(1)>')]]),
    '/s/',
  );
  expect(await strikesOf(context, served, ['a.html'])).toEqual(expect.arrayContaining(['a.html: ran']));
  await served.close();
  await context.close();
});

test.each(Array.from({ length: STUDIOS }, (_, turn) => [turn]))(
  'studio %i: in none of its pages does anything run',
  async (turn) => {
    const { pages, strings } = filled(turn);
    expect(strings.length).toBeGreaterThan(15);
    const { value, problems } = readPages(pages);
    expect(problems.filter(isWrong)).toEqual([]);
    const files = await filesOf(value);
    const all = [...files.values()].map((bytes) => new TextDecoder().decode(bytes)).join('');
    // They are there, and shown as text.
    expect(all).toContain('struck(1)');
    const context = await browser.newContext({ bypassCSP: true });
    const served = await serveFolder(files, '/s/');
    const paths = [...files.keys()].filter((path) => path.endsWith('.html') && !path.includes('rulebook'));
    expect(paths.length).toBeGreaterThan(9);
    expect(await strikesOf(context, served, paths)).toEqual([]);
    await served.close();
    await context.close();
  },
  120_000,
);
