/** The partner's page on a phone: as a leaf of the booklet and as a page of its own, which anybody may read. */
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, BrowserContext } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { webSources } from '../../src/app/web-sources.js';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import type { Booklet, PartnerPart } from '../../src/model/booklet.js';
import { plainText } from '../../src/model/prose.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import { renderBookletFile, shellFiles } from '../../src/web/render-booklet.js';
import { renderPartner } from '../../src/web/render-partner.js';
import { planDemo, planIn } from '../studio/demo-plans.js';
import { axeFaults } from './axe.js';
import { holdPhone, listenTo, openBrowser } from './phone.js';
import { type Served, serveFolder } from './serve-folder.js';

const demo = await planDemo();
const client = demo.clients.find(({ id }) => id === 'imre-fane') ?? expect.fail();
const plan = planIn(demo, client.id);
const booklet = composeBooklet({ library: demo.library, client, plan });
const part = booklet.parts.find((one): one is PartnerPart => one.kind === 'partner') ?? expect.fail();

let folder: string;
let browser: Browser;
let context: BrowserContext;
let served: Served;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'partner-'));
  const parts = await prepareShell(webSources());
  await writeFile(join(folder, 'booklet.html'), renderBookletFile(booklet, clientPlanOf(plan), parts));
  const hosted = new Map<string, Uint8Array>();
  for (const { path, bytes } of [...(await shellFiles(parts, booklet.language)), ...renderPartner(booklet)])
    hosted.set(path, bytes);
  served = await serveFolder(hosted, '/imre/');
  browser = await openBrowser();
  context = await holdPhone(browser, { width: 320 });
}, 300_000);
afterAll(async () => {
  await browser?.close();
  await served?.close();
  await rm(folder, { recursive: true, force: true });
});

const addressOf = (name: string): string =>
  name === 'partner.html' ? `${served.address}${name}` : pathToFileURL(join(folder, name)).href;

const PAGES = [
  ['a leaf of the booklet', 'booklet.html#partner'],
  ['a page of its own', 'partner.html'],
] as const;

describe.each(PAGES)('%s', (_, address) => {
  test('says of every exercise all that the part says, no wider than the phone, and axe finds nothing', async () => {
    const page = await context.newPage();
    const heard = listenTo(page);
    const [name = '', leaf] = address.split('#');
    await page.goto(`${addressOf(name)}${leaf === undefined ? '' : `#${leaf}`}`);
    const shown = page.locator('.leaf.partner');
    await shown.waitFor();
    const text = ((await shown.textContent()) ?? '').replace(/\s+/g, ' ');
    const lines = part.watched.flatMap(({ name: called, count, watch, faults, stop }) => [
      called,
      ...count,
      ...[...watch, ...stop].map(plainText),
      ...faults.flatMap(({ see, say }) => [plainText(see), plainText(say)]),
    ]);
    expect(lines.length).toBeGreaterThan(40);
    for (const line of [...part.paragraphs.map(plainText), part.call, ...lines])
      expect(text).toContain(line.replace(/\s+/g, ' '));
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(320);
    await shown.locator('.index a').last().tap();
    await page.waitForFunction(`scrollY > 1000`);
    expect(await axeFaults(page)).toEqual([]);
    expect(heard.complaints).toEqual([]);
    await page.close();
  });
});

describe('the page of its own', () => {
  test('runs nothing, leads nowhere else, and holds nothing else of the booklet', async () => {
    const [html = '', ...none] = renderPartner(booklet).map(({ bytes }) => new TextDecoder().decode(bytes));
    expect(none).toEqual([]);
    expect(html).not.toContain('<script');
    const [, family = ''] = client.name.split(' ');
    expect(html).not.toContain(family);
    const links = [...html.matchAll(/href="([^"]*)"/g)].map(([, to = '']) => to);
    expect(links.filter((to) => !to.startsWith('#partner--'))).toEqual(['data:,', 'booklet.css']);
    for (const { id, title } of part.sessions.map((one) => ({ id: one.exercises[0] ?? '', title: one.title }))) {
      expect(html).toContain(title);
      expect(html).toContain(`id="partner--${id}"`);
    }
    expect(html).not.toMatch(/\d\s?(kg|lb)\b/);
  });

  test('there is none without a partner, and none once the booklet is withdrawn', () => {
    const without: Booklet = { ...booklet, parts: booklet.parts.filter(({ kind }) => kind !== 'partner') };
    expect(renderPartner(without)).toEqual([]);
  });
});
