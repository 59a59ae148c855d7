/** The web booklet read back from a browser and held to the booklet it was drawn from, in every way it can be opened. */
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { bookOf } from '../../layouts/book/leaves.js';
import { webSources } from '../../src/app/web-sources.js';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import type { Booklet } from '../../src/model/booklet.js';
import type { ClientPlan } from '../../src/model/client-plan.js';
import { invariant } from '../../src/model/result.js';
import { unpackPlan } from '../../src/session/travelling.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import { renderBookletFile, renderBookletFolder } from '../../src/web/render-booklet.js';
import { english } from '../../src/words/english.js';
import { englishPage } from '../../src/words/english-page.js';
import { sayPlan } from '../../src/words/say-plan.js';
import { fixtureBooklet, longNamesBooklet } from '../fixtures/booklet.js';
import { planDemo } from '../studio/demo-plans.js';
import { hostileBooklet } from '../web/hostile-booklet.js';
import { fixturePlan } from '../web/plan-fixture.js';
import { everyShapeBooklet, everyShapeSent } from './every-shape-booklet.js';
import { expectedLines, expectedTurns, readLine, readShape, saidAround, saidIn } from './expected-turns.js';
import { type Heard, type Held, listenTo } from './phone.js';
import { phoneInHand } from './phone-in-hand.js';
import { type ReadBooklet, readBookletBack } from './read-booklet-back.js';
import { serveFolder } from './serve-folder.js';

const plan = clientPlanOf(fixturePlan);
const phone = phoneInHand('leaves');
let files: ReadonlyMap<string, Uint8Array>;

const { addressOf } = phone;

beforeAll(async () => {
  const parts = await prepareShell(webSources());
  const write = async (name: string, bytes: string | Uint8Array): Promise<void> => {
    await mkdir(dirname(join(phone.folder, name)), { recursive: true });
    await writeFile(join(phone.folder, name), bytes);
  };
  await write('ordinary.html', renderBookletFile(fixtureBooklet, plan, parts));
  await write('awkward.html', renderBookletFile(longNamesBooklet, plan, parts));
  await write('every-shape.html', renderBookletFile(everyShapeBooklet, everyShapeSent, parts));
  await write('hostile.html', renderBookletFile(hostileBooklet, plan, parts));
  files = new Map((await renderBookletFolder(fixtureBooklet, plan, parts)).map(({ path, bytes }) => [path, bytes]));
  for (const [path, bytes] of files) await write(join('hosted', path), bytes);
});

async function open(address: string, held: Held = {}): Promise<{ page: Page; heard: Heard }> {
  const context = await phone.hold(held);
  const page = await context.newPage();
  const heard = listenTo(page);
  await page.goto(address);
  return { page, heard };
}

/** As it is written down. */
const bare = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

function expectSame(read: ReadBooklet, booklet: Booklet, sent: unknown = plan): void {
  expect(read.turned).toBe(read.leaves);
  expect(read.turns.map(readShape)).toEqual(expectedTurns(booklet));
  const lines = expectedLines(booklet);
  expect(read.lines.map(({ said }, at) => readLine(said, lines[at]?.name ?? ''))).toEqual(lines);
  const planned = booklet.parts.flatMap((part) =>
    part.kind === 'session' ? part.rows.flatMap((row) => row.cells.flatMap((cell) => saidIn(cell, row))) : [],
  );
  const said = read.turns
    .flatMap((turn) => turn.said)
    .join(' ')
    .toLowerCase();
  expect(planned.filter((text) => !said.includes(text.toLowerCase()))).toEqual([]);
  for (const part of booklet.parts) {
    if (part.kind === 'session')
      for (const { week } of part.weeks) {
        const leaves = read.around.filter(({ id }) => id.startsWith(`w${week}-${part.id}`));
        const around = leaves.map((leaf) => leaf.said).join(' ');
        expect(saidAround(part, week).filter((text) => !around.includes(text))).toEqual([]);
      }
    if (part.kind !== 'session') expect(read.heads).toContain(part.kind === 'cover' ? part.client : part.title);
  }
  const pageOf = (exercise: string) => read.pages.find(({ id }) => id === exercise);
  const says = { called: (id: string) => pageOf(id)?.called, leads: (id: string) => pageOf(id)?.leads ?? [] };
  expect(unpackPlan(JSON.parse(read.plan), says)).toEqual(sent);
}

async function writeDemo(id: string): Promise<{ readonly booklet: Booklet; readonly sent: ClientPlan }> {
  const demo = await planDemo();
  const client = demo.clients.find((one) => one.id === id);
  const planned = demo.plans.get(id);
  invariant(client !== undefined && planned !== undefined, 'a demo client whose plan stands');
  const said = sayPlan(planned);
  const booklet = composeBooklet({ library: demo.library, client, plan: said });
  const sent = clientPlanOf(said);
  const parts = await prepareShell(webSources());
  await writeFile(join(phone.folder, `${id}.html`), renderBookletFile(booklet, sent, parts));
  return { booklet, sent };
}

describe('one file, opened from a disk', () => {
  test.each([
    ['ordinary', fixtureBooklet],
    ['awkward', longNamesBooklet],
    ['every-shape', everyShapeBooklet],
  ] as const)('%s: every set, load and cue', async (name, booklet) => {
    const { page, heard } = await open(addressOf(`${name}.html`));
    expectSame(await readBookletBack(page), booklet, name === 'every-shape' ? bare(everyShapeSent) : plan);
    expect(heard.complaints).toEqual([]);
    expect(heard.requests.filter((url) => !url.startsWith('data:'))).toEqual([addressOf(`${name}.html`)]);
  });

  test.each(['rowan-ashby', 'hester-vane'])('of the demo studio, %s: every set, load and cue', async (id) => {
    const { booklet, sent } = await writeDemo(id);
    const { page, heard } = await open(addressOf(`${id}.html`));
    expectSame(await readBookletBack(page), booklet, bare(sent));
    expect(heard.complaints).toEqual([]);
  });

  test('with scripting off the whole booklet stands in the page, in order, and nothing is hidden', async () => {
    const { page } = await open(addressOf('ordinary.html'), { javaScript: false });
    const leaves = page.locator('.leaf');
    const heads = page.locator('.leaf > .sheet > header h2, .cover .sheet > h2');
    const count = await leaves.count();
    expect(count).toBe(await heads.count());
    for (const at of [0, 4, Math.floor(count / 2), count - 1]) {
      expect(await heads.nth(at).isVisible()).toBe(true);
    }
    expect(await page.getByText('16\u00a0kg ×\u00a09').first().isVisible()).toBe(true);
    await page.locator('summary').first().click();
    expect(await page.getByText('Slower on the way down, to half depth').first().isVisible()).toBe(true);
  });

  test('without a script that could keep marks, cover and how-to say so; with one that can, neither does', async () => {
    for (const [javaScript, seen] of [
      [false, true],
      [true, false],
    ] as const) {
      const { page } = await open(addressOf('ordinary.html'), { javaScript });
      for (const leaf of ['cover', 'how-to']) {
        await page.goto(`${addressOf('ordinary.html')}#${leaf}`);
        const head = page.locator(`#${leaf} h2`);
        await head.waitFor({ state: 'visible' });
        if (javaScript) await page.waitForSelector('.can-keep');
        const line = page.locator(`#${leaf}`).getByText(englishPage.readingCopy);
        expect(await line.count()).toBe(1);
        expect(await line.isVisible()).toBe(seen);
      }
    }
  });

  test('hostile words run nothing', async () => {
    const { page, heard } = await open(addressOf('hostile.html'));
    page.on('dialog', () => heard.complaints.push('a dialog opened'));
    expect((await readBookletBack(page)).turns.length).toBe(expectedTurns(hostileBooklet).length);
    expect(heard.complaints).toEqual([]);
  });
});

describe('a hosted folder', () => {
  test('under any path: every set, load and cue; nothing asked of another host; the faces arrive', async () => {
    const served = await serveFolder(files, '/studio/slate-yard/k7/');
    try {
      const { page, heard } = await open(served.address);
      await page.waitForSelector('.book.ready');
      expectSame(await readBookletBack(page), fixtureBooklet);
      const read = await readBookletBack(page);
      expect([read.title, read.language]).toEqual([fixtureBooklet.title, fixtureBooklet.language]);
      // The cover needs two of the three faces; a leaf with cues needs all.
      await page.goto(`${served.address}#w1-a--goblet-squat`);
      await page.evaluate(async () => {
        await new Promise(requestAnimationFrame);
        await document.fonts.ready;
      });
      const faces = await page.evaluate(() => [...document.fonts].map(({ status }) => status).sort());
      // Three faces of four sets of letters each; this booklet has Latin letters only.
      expect(faces).toEqual([...Array(3).fill('loaded'), ...Array(9).fill('unloaded')]);
      expect(heard.complaints).toEqual([]);
      expect(heard.requests.filter((url) => !url.startsWith(served.address) && !url.startsWith('data:'))).toEqual([]);
      expect(served.missed).toEqual([]);
    } finally {
      await served.close();
    }
  });

  test('where the client’s part cannot be had, the way to it stays on the page', async () => {
    const alone = new Map([...files].filter(([path]) => path !== 'payload.html'));
    const served = await serveFolder(alone, '/');
    try {
      const { page } = await open(served.address);
      await page.waitForLoadState('networkidle');
      expect(await page.getByRole('link', { name: 'Open your booklet' }).isVisible()).toBe(true);
    } finally {
      await served.close();
    }
  });

  test('an address with a leaf in it opens there', async () => {
    const served = await serveFolder(files, '/');
    try {
      const { page } = await open(`${served.address}#w2-a--one-arm-row`);
      await page.waitForSelector('.book.ready');
      expect(await page.locator('h2:visible').first().textContent()).toBe('One-arm row');
    } finally {
      await served.close();
    }
  });

  test('from a disk, where nothing can be fetched, it turns to the client’s part, styled and whole', async () => {
    const { page, heard } = await open(addressOf('hosted/index.html'));
    await page.waitForURL(addressOf('hosted/payload.html'));
    expectSame(await readBookletBack(page), fixtureBooklet);
    const size = await page.evaluate(() => getComputedStyle(document.querySelector('.load') ?? document.body).fontSize);
    expect(Number.parseFloat(size)).toBeGreaterThan(55);
    expect(heard.complaints).toEqual([]);
  });

  test('with scripting off it leads to the client’s part by a link', async () => {
    const { page } = await open(addressOf('hosted/index.html'), { javaScript: false });
    await page.getByRole('link').click();
    expect(page.url()).toBe(addressOf('hosted/payload.html'));
    expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe(fixtureBooklet.title);
  });
});

/** The browser itself brings a leaf out before the script is told of the address, and puts the other away. */
const settled = async (page: Page): Promise<void> => {
  await page.waitForFunction(
    () =>
      document.querySelectorAll('.leaf:not([hidden])').length === 1 && document.querySelector(':target:not([hidden])'),
  );
};

describe('turning leaves', () => {
  test('one leaf at once; on and back; the address and the title follow; the heading is read first', async () => {
    const { page } = await open(`${addressOf('ordinary.html')}#w1-a--goblet-squat`);
    const shown = async (): Promise<readonly string[]> => {
      await settled(page);
      return page.evaluate(() => [...document.querySelectorAll('.leaf:not([hidden])')].map(({ id }) => id));
    };
    expect(await shown()).toEqual(['w1-a--goblet-squat']);
    await page.locator('.main:visible').click();
    await page.waitForFunction(() => location.hash === '#w1-a--one-arm-row');
    expect(await shown()).toEqual(['w1-a--one-arm-row']);
    expect(await page.title()).toMatch(/^One-arm row/);
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('One-arm row');
    await page.goBack();
    expect(await shown()).toEqual(['w1-a--goblet-squat']);
    await page.getByRole('link', { name: 'The whole exercise' }).click();
    expect(await shown()).toEqual(['exercise-goblet-squat']);
  });

  // Its partner’s leaf stands elsewhere in the page than in the order one turns to it.
  test('one turns from the cover to the last leaf by date, and each leads back to the one before', async () => {
    const { booklet } = await writeDemo('nell-fane');
    const { page } = await open(addressOf('nell-fane.html'));
    const turned = await page.evaluate(async () => {
      const met: [string, string, string][] = [];
      for (let on = '#cover'; on !== '' && met.length < 500; ) {
        const shown = new Promise((done) => addEventListener('hashchange', done, { once: true }));
        location.hash = on;
        await shown;
        const leaf = document.querySelector('.leaf:not([hidden])');
        const to = (way: string): string =>
          leaf?.querySelector(`:scope > .sheet > footer .on .${way}`)?.getAttribute('href') ?? '';
        on = to('main');
        met.push([leaf?.id ?? '', to('back'), leaf?.querySelector('footer .on .main')?.textContent ?? '']);
      }
      return met;
    });
    const { leaves, inPage } = bookOf(booklet, english);
    expect(inPage.findIndex(({ kind }) => kind === 'partner')).not.toBe(
      leaves.findIndex(({ kind }) => kind === 'partner'),
    );
    expect(turned).toEqual(
      leaves.map(({ id }, at) => [
        id,
        at === 0 ? '' : `#${leaves[at - 1]?.id}`,
        at === leaves.length - 1 ? '' : `Next: ${leaves[at + 1]?.title}`,
      ]),
    );
  });

  test('from the safety page back to the exercise one came from, and to the pain scale without leaving it', async () => {
    const { page } = await open(`${addressOf('ordinary.html')}#w1-a--goblet-squat`);
    await page.getByRole('link', { name: 'Something hurts' }).click();
    const back = page.getByRole('link', { name: 'Back to Goblet squat' }).first();
    await back.waitFor();
    await page.getByRole('link', { name: 'The pain scale' }).click();
    await page.waitForFunction(() => document.activeElement?.id === 'pain');
    expect(await page.locator('.leaf:not([hidden])').getAttribute('id')).toBe('safety');
    const top = await page.evaluate(() => document.getElementById('pain')?.getBoundingClientRect().top ?? -1);
    expect(top).toBeGreaterThanOrEqual(0);
    expect(top).toBeLessThan(320);
    await back.click();
    await page.waitForFunction(() => location.hash === '#w1-a--goblet-squat');
    await settled(page);
    expect(await page.locator('.leaf:not([hidden])').getAttribute('id')).toBe('w1-a--goblet-squat');
    // Come to by way of the cover it has nowhere in a session to lead back to.
    await page.evaluate(() => {
      location.hash = 'cover';
    });
    await page.waitForFunction(() => document.getElementById('cover')?.hasAttribute('hidden') === false);
    await page.evaluate(() => {
      location.hash = 'safety';
    });
    await page.waitForFunction(() => document.getElementById('safety')?.hasAttribute('hidden') === false);
    expect(await back.isVisible()).toBe(false);
  });

  test('wherever a step that must be earned stands, so does what to do otherwise', async () => {
    const { page } = await open(addressOf('ordinary.html'));
    for (const leaf of ['week-5', 'w5-a', 'w5-a--goblet-squat', 'week-6', 'w6-a']) {
      const said = await page.evaluate((id) => document.getElementById(id)?.textContent ?? '', leaf);
      const step = said.indexOf('20\u00a0kg ×');
      expect([leaf, step >= 0, said.indexOf('Only if earned') < step && said.includes('Only if earned')]).toEqual([
        leaf,
        true,
        true,
      ]);
      expect(said).toMatch(/Otherwise: 16\skg\s×\s\d+, \d sets/);
    }
  });

  test.each(['ordinary', 'every-shape'])('every link inside leads to a leaf that is there: %s', async (name) => {
    const { page } = await open(addressOf(`${name}.html`));
    const lost = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLAnchorElement>('a[href]')]
        .map((link) => link.getAttribute('href') ?? '')
        // The way to the training screens, which stand beside the leaves.
        .filter((href) => href !== '#now' || document.getElementById('training') === null)
        .filter((href) => !href.startsWith('#') || !document.getElementById(href.slice(1))?.closest('.leaf')),
    );
    expect(lost).toEqual([]);
  });
});
