/**
 * What is published, as it is hosted: by nginx and by Apache under a sub-path with the strict headers on, by a folder on a stick, and as a
 * stranger, a client and a crawler find it.
 */
import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, realpathSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { bytesBelow } from '../app/run-chalkleaf.js';
import { type DemoStudio, demoStudio } from '../publish/demo-studio.js';
import { besideEnvelopes } from '../publish/envelope-letters.js';
import { holdPhone, listenTo, openBrowser } from './phone.js';
import { serveByApache } from './serve-apache.js';
import { type Hosted, serveByNginx } from './serve-nginx.js';

const UNDER = '/gym/library/';
/** Every header a host is asked for. */
const SENT = [
  ...['content-security-policy', 'referrer-policy', 'x-content-type-options', 'permissions-policy', 'cache-control'],
  ...['cross-origin-opener-policy', 'cross-origin-resource-policy', 'x-robots-tag'],
];
const work = mkdtempSync(join(tmpdir(), 'chalkleaf-hosting-'));
const stick = join(work, 'stick with a space');
let browser: Browser;
let hosted: Hosted;
let studio: DemoStudio;
/** As studio.md says it. */
let address: string;
let folder: string;
let link: string;

/** Of a path below the public folder, whether it is of a sealed booklet. */
const isSealed = (path: string): boolean => /^[0-9a-f]{32}\//.test(path);
const handedOver = (client: string): string =>
  pathToFileURL(join(studio.output, 'private', 'desk', 'hand-over', `${client}.html`)).href;

const freePort = (): Promise<number> =>
  new Promise((done) => {
    const server = createServer();
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => done(address !== null && typeof address === 'object' ? address.port : 0));
    });
  });

beforeAll(async () => {
  const port = await freePort();
  address = `http://chalkleaf.localhost:${port}${UNDER}`;
  studio = demoStudio(work, ['nell-fane', 'imre-fane'], address);
  for (const args of [
    ['issue', 'nell-fane'],
    ['issue', 'imre-fane'],
    ['key', 'rotate', 'imre-fane', '--by', 'both'],
    ['build'],
    ['publish'],
  ]) {
    const ran = studio.run(...args);
    expect(ran.code, `${args.join(' ')}: ${ran.out}${ran.err}`).toBe(0);
  }
  const upload = join(studio.output, 'upload');
  expect(readdirSync(upload).filter((name) => isSealed(`${name}/`))).toHaveLength(2);
  hosted = await serveByNginx(upload, UNDER, port);
  cpSync(upload, stick, { recursive: true, dereference: true });
  browser = await openBrowser();
  const sheet = await browser.newPage();
  await sheet.goto(handedOver('nell-fane'));
  link = /http\S+/.exec(await sheet.locator('textarea').inputValue())?.[0] ?? '';
  folder = /[0-9a-f]{32}/.exec(link)?.[0] ?? '';
  expect(folder).not.toBe('');
  await sheet.close();
}, 240_000);

afterAll(async () => {
  await browser?.close();
  await hosted?.close();
  rmSync(work, { recursive: true, force: true });
});

/** What a page complains of, and what it asks of anybody but its own host. */
async function watch(
  context: BrowserContext,
): Promise<{ readonly page: Page; readonly heard: () => readonly string[] }> {
  const page = await context.newPage();
  const heard = listenTo(page);
  return {
    page,
    heard: () => [
      ...heard.complaints,
      ...heard.requests.filter((url) => !/^(data|file|blob):/.test(url) && new URL(url).port !== new URL(link).port),
    ],
  };
}

/** What can be read on the page, and not what else it carries. */
const shownText = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const shown = [...document.querySelectorAll('h1, p, button, label')].filter((one) => one.checkVisibility());
    return shown.map(({ textContent }) => textContent).join('\n');
  });

const seesOwn = (page: Page): Promise<void> =>
  expect
    .poll(async () => (await page.locator('h1').first().textContent())?.includes('Nell'), { timeout: 20_000 })
    .toBe(true);

test('the message carries the address under the sub-path, and the folder nobody guesses', () => {
  expect(link).toMatch(new RegExp(`^http://chalkleaf\\.localhost:\\d+${UNDER}${folder}/#`));
});

describe('under a sub-path, with the headers on', () => {
  test('they come with every file; a sealed folder asks not to be listed, the library does not', async () => {
    for (const path of ['', 'studio.css', 'exercises/plank.html', `${folder}/`, `${folder}/worker.js`]) {
      const answer = await fetch(hosted.address + path);
      const at = (name: string): string => answer.headers.get(name) ?? '';
      expect(answer.status, path).toBe(200);
      expect(at('content-security-policy'), path).toMatch(/^default-src 'none';.*frame-ancestors 'none'$/);
      expect(at('content-security-policy'), path).not.toMatch(/unsafe|https?:|\*/);
      expect(at('referrer-policy'), path).toBe('no-referrer');
      expect(at('x-content-type-options'), path).toBe('nosniff');
      expect(at('x-robots-tag'), path).toBe(path.startsWith(folder) ? 'noindex, nofollow, noarchive' : '');
    }
  });

  test('Apache reads the same from the file it looks for, and lists no folder', async () => {
    const apache = await serveByApache(join(studio.output, 'upload'), UNDER, await freePort());
    const headersAt = async (at: string): Promise<readonly string[]> => {
      const { status, headers } = await fetch(at);
      return [String(status), ...SENT.map((name) => `${name}: ${headers.get(name)}`)];
    };
    for (const path of [
      '',
      'studio.css',
      'exercises/plank.html',
      `${folder}/`,
      `${folder}/worker.js`,
      `${folder}/paper.jwe`,
      'exercises/nothing-here.html',
    ]) {
      expect([path, await headersAt(apache.address + path)]).toEqual([path, await headersAt(hosted.address + path)]);
    }
    const missing = await (await fetch(`${apache.address}exercises/nothing-here.html`)).text();
    expect(missing).toBe(readFileSync(join(studio.output, 'upload', '404.html'), 'utf8'));
    expect((await fetch(`${apache.address}exercises/`)).status).not.toBe(200);
    expect((await fetch(`${apache.address}${folder}/paper.jwe`)).headers.get('content-type')).toBe(
      'application/octet-stream',
    );
    await apache.close();
  });

  test('a stranger walks through the library, and finds no booklet', async () => {
    const context = await holdPhone(browser);
    const { page, heard } = await watch(context);
    await page.goto(hosted.address);
    const links = await page.locator('a[href]').evaluateAll((all) => all.map((a) => (a as HTMLAnchorElement).href));
    const own = [...new Set(links.map((href) => href.replace(/#.*/, '')))].filter((href) =>
      href.startsWith(hosted.address),
    );
    expect(own.length).toBeGreaterThan(60);
    expect(own.filter((href) => /[0-9a-f]{32}/.test(href))).toEqual([]);
    for (const href of own.filter((_, index) => index % 9 === 0)) {
      expect((await page.goto(href))?.status(), href).toBe(200);
      expect(await page.locator('h1').count(), href).toBe(1);
    }
    expect(heard()).toEqual([]);
    await context.close();
  });

  test('who asks for what is not there is told so, and led back into the library', async () => {
    const context = await holdPhone(browser);
    const page = await context.newPage();
    expect((await page.goto(`${hosted.address}exercises/nothing-here.html`))?.status()).toBe(404);
    await page.locator('main a[href], nav a[href]').first().click();
    expect(new URL(page.url()).pathname).toBe(UNDER);
    expect(await page.locator('h1').count()).toBe(1);
    await context.close();
  });

  test('a stranger with the folder’s name and no key reads nothing of anybody', async () => {
    const context = await holdPhone(browser);
    const { page, heard } = await watch(context);
    await page.goto(`${hosted.address}${folder}/`);
    await page.waitForLoadState('networkidle');
    const text = await page.locator('body').textContent();
    expect(text?.length).toBeGreaterThan(10);
    expect(besideEnvelopes(await page.content())).not.toMatch(/Nell|Fane|Goblet|\bkg\b/i);
    expect(heard()).toEqual([]);
    await context.close();
  });

  test('the client opens the link, and again without a network', async () => {
    const context = await holdPhone(browser);
    const { page, heard } = await watch(context);
    await page.goto(link);
    await page.getByRole('button', { name: 'Open, and remember on this phone' }).click();
    await seesOwn(page);
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    await page.reload();
    await seesOwn(page);
    await expect
      .poll(() => page.evaluate(() => navigator.serviceWorker.controller?.state ?? 'none'), { timeout: 20_000 })
      .toBe('activated');
    expect(heard()).toEqual([]);
    await context.setOffline(true);
    await page.goto(link);
    await seesOwn(page);
    await context.close();
  });

  test('with scripting off the library reads, and a sealed page says how to go on', async () => {
    const context = await holdPhone(browser, { javaScript: false });
    const page = await context.newPage();
    await page.goto(`${hosted.address}exercises/plank.html`);
    expect(await page.locator('main').textContent()).toContain('Plank');
    await page.goto(`${hosted.address}${folder}/`);
    await page.locator('a.main').click();
    expect(await page.locator('.unopened').textContent()).toContain('ask your coach for it on paper');
    expect(besideEnvelopes(await page.content())).not.toContain('Nell');
    await context.close();
  });

  test('a crawler is led to every page of the library and to no sealed folder', async () => {
    const index = await (await fetch(hosted.address)).text();
    const files = readdirSync(join(studio.output, 'upload'), { recursive: true, encoding: 'utf8' });
    const telling = files.filter(
      (path) => !isSealed(`${path}/`) && /\.(html|xml|txt|json|js|conf)$|_headers|htaccess/.test(path),
    );
    expect(telling.length).toBeGreaterThan(80);
    for (const path of telling.filter((one) => !existsSync(join(studio.output, 'upload', one, '.')))) {
      expect(readFileSync(join(studio.output, 'upload', path), 'utf8'), path).not.toContain(folder);
    }
    // From link to link, as a crawler goes; and the map says the same.
    const found = new Set([hosted.address]);
    for (const at of found) {
      const page = at === hosted.address ? index : await (await fetch(at)).text();
      for (const [, href = ''] of page.matchAll(/<a [^>]*?href="([^"#]+)/g)) {
        const to = new URL(href, at).href.replace(/index\.html$/, '');
        if (to.startsWith(hosted.address) && /(\.html|\/)$/.test(to)) found.add(to);
      }
    }
    const pages = files
      .filter((path) => path.endsWith('.html') && !isSealed(path) && path !== '404.html')
      .map((path) => new URL(path.replace(/index\.html$/, ''), hosted.address).href);
    expect([...found].sort()).toEqual(pages.sort());
    const map = await (await fetch(`${hosted.address}sitemap.xml`)).text();
    const mapped = [...map.matchAll(/<loc>([^<]+)<\/loc>/g)].map(([, at = '']) => new URL(at).pathname);
    expect(mapped.sort()).toEqual(pages.map((at) => new URL(at).pathname));
  });

  test('every page of a sealed folder asks of itself not to be listed, and no page of the library does', () => {
    const upload = join(studio.output, 'upload');
    for (const [path, asks] of [
      [`${folder}/index.html`, true],
      [`${folder}/payload.html`, true],
      ['exercises/plank.html', false],
    ] as const) {
      expect([path, readFileSync(join(upload, path), 'utf8').includes('<meta name="robots" content="noindex')]).toEqual(
        [path, asks],
      );
    }
  });

  test('an exercise is shown elsewhere by its drawing, at its whole address under the sub-path', async () => {
    const page = await (await fetch(`${hosted.address}exercises/plank.html`)).text();
    const [, picture = ''] = /<meta property="og:image" content="([^"]*)"/.exec(page) ?? [];
    expect(picture).toMatch(new RegExp(`^http://chalkleaf\\.localhost:\\d+${UNDER}previews/plank-[0-9a-f]{12}\\.png$`));
    const answer = await fetch(hosted.address + picture.slice(picture.indexOf(UNDER) + UNDER.length));
    expect(answer.headers.get('content-type')).toBe('image/png');
    const bytes = new DataView(await answer.arrayBuffer());
    // Where a PNG says how large it is (PNG specification, third edition, 11.2.1).
    expect([bytes.getUint32(16), bytes.getUint32(20)]).toEqual([1200, 630]);
    expect(page).toContain(
      '<meta property="og:image:width" content="1200"/><meta property="og:image:height" content="630"/>',
    );
  });
});

test('from a stick: the library reads from the disk, and says nothing wrong', async () => {
  const context = await holdPhone(browser);
  const { page, heard } = await watch(context);
  await page.goto(pathToFileURL(join(stick, 'index.html')).href);
  await page.locator('a[href*="exercises/plank"]').first().click();
  await page.waitForURL(/plank/);
  expect(await page.locator('h1').textContent()).toContain('Plank');
  expect(heard()).toEqual([]);
  await context.close();
});

test('from a stick: a sealed page keeps to itself and says how to go on; the booklet in one file opens', async () => {
  const context = await holdPhone(browser);
  const { page, heard } = await watch(context);
  await page.goto(`${pathToFileURL(join(stick, folder, 'index.html')).href}${new URL(link).hash}`);
  await expect.poll(() => shownText(page), { timeout: 20_000 }).toMatch(/link your coach sent you|begins with https/);
  expect(await shownText(page)).not.toContain('Nell');
  await page.goto(pathToFileURL(join(studio.output, 'private', 'clients', 'nell-fane', 'booklet.html')).href);
  await seesOwn(page);
  expect(heard()).toEqual([]);
  await context.close();
});

test('where link and words are both needed, the slip to cut out has the words and never the link; paper has the slip alone', async () => {
  const page = await browser.newPage();
  await page.goto(handedOver('imre-fane'));
  const slip = page.locator('.slip');
  const given = (await slip.locator('.given-words').textContent()) ?? '';
  expect(given.trim().split(/\s+/).length).toBeGreaterThanOrEqual(6);
  expect(await slip.locator('svg').count()).toBe(0);
  expect(await slip.textContent()).not.toContain('http');
  expect(await page.locator('svg.code').count()).toBe(1);
  expect(await page.locator('textarea').inputValue()).not.toContain(given.trim());
  await page.emulateMedia({ media: 'print' });
  expect(await slip.isVisible()).toBe(true);
  for (const hidden of ['textarea', 'svg.code']) expect(await page.locator(hidden).isVisible(), hidden).toBe(false);
  await page.close();
});

test('with all clients absent the public folder is the same, byte for byte, but for the sealed folders', () => {
  const built = bytesBelow(realpathSync(join(studio.output, 'public')));
  expect(built.filter(([path]) => isSealed(path)).length).toBeGreaterThan(20);
  const alone = demoStudio(join(work, 'alone'), [], address);
  const ran = alone.run('build');
  expect(ran.code, ran.out).toBe(0);
  expect(existsSync(join(alone.output, 'private', 'clients'))).toBe(false);
  const without = bytesBelow(realpathSync(join(alone.output, 'public')));
  expect(without.length).toBeGreaterThan(90);
  expect(built.filter(([path]) => !isSealed(path))).toEqual(without);
}, 240_000);
