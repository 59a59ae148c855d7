/**
 * A client whose coach lets the phone plan again, on a hosted booklet in Chromium: after four hard sessions the fifth says
 * what paper says, what today is, and why; nothing of it changes while the session is under way; the network is not asked.
 */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { webSources } from '../../src/app/web-sources.js';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import { bookletId } from '../../src/model/identity.js';
import type { LogEvent } from '../../src/model/log.js';
import type { Plan } from '../../src/model/plan.js';
import { replanBetween } from '../../src/phone/replan-between.js';
import { finish } from '../../src/session/in-steps.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import { renderBookletFile, renderBookletFolder } from '../../src/web/render-booklet.js';
import { sayPlan } from '../../src/words/say-plan.js';
import { doAsPlanned, sessionAt } from '../session/make-marks.js';
import { planDemo, planIn } from '../studio/demo-plans.js';
import { holdPhone, listenTo, openBrowser } from './phone.js';
import { type Served, serveFolder } from './serve-folder.js';
import { tap } from './train-page.js';

const BOOKLET = bookletId('0123456789abcdef0123456789abcdef');
const demo = await planDemo();
const client = demo.clients.find(({ id }) => id === 'torben-slade') ?? expect.fail();
const plan: Plan = { ...sayPlan(planIn(demo, client.id)), edition: 1 };
const sent = clientPlanOf(plan, { bookletId: BOOKLET, standing: 'stands' });
const FIFTH = 5;
const day = sessionAt(plan, FIFTH).date;

/** Three reps fewer than planned, and none left, four times. */
const marked: readonly LogEvent[] = [1, 2, 3, 4].flatMap((occurrence) =>
  doAsPlanned(plan, occurrence, {
    edition: 1,
    reserve: 0,
    but: ({ reps }) => (reps === undefined ? {} : { reps: Math.max(1, reps - 3), asPlanned: false }),
  }),
);

const now = Date.parse(`${day}T18:00:00Z`);
const expected = finish(
  replanBetween({ plan: sent, events: marked, now, today: day, language: 'en', called: () => undefined }),
);
const ofFifth = expected.filter(({ occurrence }) => occurrence === FIFTH);

let browser: Browser;
let served: Served;
let files: Map<string, Uint8Array>;

beforeAll(async () => {
  const booklet = composeBooklet({ library: demo.library, client, plan });
  const parts = await prepareShell(webSources());
  files = new Map((await renderBookletFolder(booklet, sent, parts)).map(({ path, bytes }) => [path, bytes]));
  files.set('one-file.html', new TextEncoder().encode(renderBookletFile(booklet, sent, parts)));
  served = await serveFolder(files, '/studio/torben/');
  browser = await openBrowser();
}, 300_000);
afterAll(async () => {
  await browser?.close();
  await served?.close();
});

const keeps = (page: Page): Promise<void> => page.locator('html.can-keep').waitFor({ state: 'attached' });

/** Marks as they would stand there: at first after four sessions. */
async function putMarks(page: Page, all: readonly LogEvent[] = marked): Promise<void> {
  await keeps(page);
  await page.evaluate(
    ([book, events]) =>
      new Promise<void>((done, fail) => {
        const opening = indexedDB.open('chalkleaf');
        opening.onsuccess = () => {
          const transaction = opening.result.transaction('marks', 'readwrite');
          for (const event of events) transaction.objectStore('marks').put({ id: event.id, book, event });
          transaction.oncomplete = () => {
            opening.result.close();
            done();
          };
          transaction.onerror = () => fail(transaction.error);
        };
      }),
    [BOOKLET, all] as const,
  );
}

const mainButton = (page: Page) => page.locator('#training-main');

/** From the start to the first set of work: as usual, and warm already. */
async function toFirstSet(page: Page): Promise<void> {
  await tap(page, mainButton(page));
  await tap(page, page.getByRole('button', { name: 'As usual' }));
  await tap(page, page.getByRole('button', { name: 'I am warm' }));
  await page.locator('.training-sheet.set').waitFor();
}

test('the fifth session is done otherwise than printed: the comparison is not of nothing', () => {
  expect(ofFifth.length).toBeGreaterThan(1);
  expect(ofFifth.every(({ because }) => because.length > 0)).toBe(true);
});

describe.each([
  ['as one file', 'one-file.html'],
  ['hosted, and then without a network', ''],
])('%s', (_, name) => {
  test('the fifth session says what paper says, what today is, and why', async () => {
    const context = await holdPhone(browser);
    context.setDefaultTimeout(10_000);
    const page = await context.newPage();
    const heard = listenTo(page);
    await page.clock.install({ time: now });
    await page.goto(`${served.address}${name}`);
    await putMarks(page);
    await page.goto(`${served.address}${name}#now`);
    await page.reload();
    await keeps(page);
    await toFirstSet(page);
    const first =
      ofFifth.find(
        ({ row }) => row === sessionAt(plan, FIFTH).groups.find(({ kind }) => kind === 'straight')?.items[0]?.row,
      ) ?? expect.fail('the first row is as printed');
    // The lighter set before it is as printed.
    expect(await page.locator('.paper').count()).toBe(0);
    await tap(page, mainButton(page));
    const plain = async (): Promise<string> =>
      ((await page.locator('.paper').first().textContent()) ?? '').replaceAll('\u00a0', ' ').trim();
    const said = await plain();
    expect(said).toContain(`Paper: ${first.paper?.load?.label} × ${first.paper?.reps}.`);
    expect(said).toContain(`Today: ${first.today?.load?.label} × ${first.today?.reps}.`);
    for (const { says } of first.because) expect(said).toContain(says.replaceAll('\u00a0', ' '));
    // What is marked now changes nothing until the session is over: neither at once nor after the page was opened again.
    await page.clock.fastForward('05:00');
    await tap(page, mainButton(page));
    await page.clock.fastForward('00:40');
    await tap(page, mainButton(page));
    expect(await plain()).toBe(said);
    await page.reload();
    await page.locator('.training-sheet.set').waitFor();
    expect(await plain()).toBe(said);
    if (name !== '') {
      // Once it is over, its last screen names the film that the coach asks for.
      await tap(page, page.getByRole('button', { name: 'Stop here for today' }));
      await tap(page, page.getByRole('button', { name: 'Not today' }));
      await tap(page, page.getByRole('button', { name: 'I can’t say' }));
      const film = page.locator('.training-sheet.finished .asked');
      expect(await film.textContent()).toMatch(/Front squat, two bells.*asks for a film of one set, from the side\./);
    }
    if (name === '') {
      await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
      await served.close();
      await context.setOffline(true);
      await page.reload();
      await page.locator('.training-sheet.set').waitFor();
      expect(await plain()).toBe(said);
    }
    expect(heard.complaints).toEqual([]);
    expect(heard.requests.filter((url) => !url.startsWith(served.address) && !url.startsWith('data:'))).toEqual([]);
    expect(heard.requests.some((url) => url.endsWith('plan-again.js'))).toBe(name === '');
    await context.close();
  });
});

test('where what plans again does not come, what was to be left out waits for the coach all the same', async () => {
  const without = new Map([...files].filter(([path]) => !path.endsWith('plan-again.js')));
  expect(without.size).toBe(files.size - 1);
  const hosted = await serveFolder(without, '/studio/torben/');
  const context = await holdPhone(browser);
  context.setDefaultTimeout(10_000);
  try {
    const page = await context.newPage();
    await page.clock.install({ time: now });
    await page.goto(hosted.address);
    const exercise = sessionAt(plan, FIFTH).groups.find(({ kind }) => kind === 'straight')?.items[0]?.exercise;
    const before = [4, 3, 2, 1].flatMap((occurrence) =>
      sessionAt(plan, occurrence)
        .groups.flatMap(({ items }) => items)
        .flatMap((item) => (item.exercise === exercise ? [{ occurrence, row: item.row }] : [])),
    );
    const last = marked.at(-1) ?? expect.fail();
    const { id, seq, edition, at } = last;
    const hurt: LogEvent = {
      ...{ id: `${id.slice(0, -3)}999`, seq: seq + 1, edition, at, kind: 'pain' },
      ...(before[0] ?? expect.fail('it is done in none of them')),
      report: { where: 'knee', side: 'left', degree: sent.pain.leave, worseNextMorning: false },
    };
    await putMarks(page, [...marked, hurt]);
    await page.goto(`${hosted.address}#now`);
    await page.reload();
    await keeps(page);
    await tap(page, mainButton(page));
    const told = await page.locator('.training-sheet.question .paper').allTextContents();
    expect(told.map((line) => line.replaceAll('\u00a0', ' ')).join(' ')).toMatch(
      new RegExp(`Left out today: .*It hurt ${sent.pain.leave} of 10 .*Ask your coach first`),
    );
  } finally {
    await context.close();
    await hosted.close();
  }
});
