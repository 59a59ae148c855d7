/**
 * Hands that tremble: fingers come down anywhere on a button, wobble by up to twelve pixels each way, tap twice, slide off. No
 * stroke is lost and none is doubled, and no second tap answers a question. And strokes themselves: five states that
 * differ in shape, without any colour.
 */
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Mark, Tally } from '../../layouts/book/tally.js';
import { webSources } from '../../src/app/web-sources.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import { renderBookletFile } from '../../src/web/render-booklet.js';
import { runs } from '../deep.js';
import { holdPhone, openBrowser } from './phone.js';
import { eventsIn, type Issued, issuedFor, keysOf, toTraining } from './train-page.js';

const SESSIONS = runs(6, 500);
/** Sessions marked on one phone before the next begins with none. */
const ON_ONE_PHONE = 12;
const START = Date.parse('2027-01-04T18:00:00');
let browser: Browser;
let folder: string;
let issued: Issued;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'jitter-'));
  issued = await issuedFor('rowan-ashby');
  const parts = await prepareShell(webSources());
  await writeFile(join(folder, 'booklet.html'), renderBookletFile(issued.booklet, issued.sent, parts, issued.drawings));
  browser = await openBrowser();
});
afterAll(async () => {
  await browser?.close();
  await rm(folder, { recursive: true, force: true });
});

/** A clock that the page itself puts on: `ahead` milliseconds beside the true one. */
declare global {
  interface Window {
    ahead: number;
  }
}

async function open(): Promise<Page> {
  const context = await holdPhone(browser);
  const page = await context.newPage();
  await page.addInitScript((start) => {
    const begun = performance.now();
    const True = Date;
    const running = performance.now.bind(performance);
    window.ahead = 0;
    const now = (): number => Math.round(start + running() - begun + window.ahead);
    performance.now = () => running() + window.ahead;
    window.Date = new Proxy(True, {
      construct: (_, given: readonly unknown[]) => Reflect.construct(True, given.length === 0 ? [now()] : given),
      get: (of, name) => (name === 'now' ? now : Reflect.get(of, name)),
    });
  }, START);
  await page.goto(pathToFileURL(join(folder, 'booklet.html')).href);
  return page;
}

interface Kept {
  readonly kind: string;
  readonly key?: string;
  readonly today?: string;
  readonly effort?: number;
  readonly reps?: number;
}

interface Trembled {
  readonly finished: number;
  readonly slid: number;
  readonly doubled: number;
  /** What a second tap or a finger that slid off has changed. */
  readonly changed: readonly string[];
}

/** So many sessions, finger by finger, within the page: what is tapped is the main button, else the first answer. */
const tremble = (page: Page, sessions: number, from: number): Promise<Trembled> =>
  page.evaluate(
    async ([many, first]) => {
      const SECOND_OF_TWO_MS = 590;
      /** As `(seed × 48271) mod (2³¹ − 1)`: Park and Miller 1988. */
      let seed = first;
      const draw = (below: number): number => {
        seed = (seed * 48_271) % 2_147_483_647;
        return seed % below;
      };
      const training = document.querySelector('#training > div') ?? document.body;
      // But for the clock, which goes on by itself.
      const look = (): string => training.innerHTML.replaceAll(/<p class="clock.*?<\/p>/g, '');
      /** Where two looks part. */
      const parting = (was: string, is: string): string => {
        const at = [...was].findIndex((letter, i) => letter !== is[i]);
        const from = Math.max(0, at - 40);
        return `${was.slice(from, at + 80)} → ${is.slice(from, at + 80)}`;
      };
      const turn = (): Promise<void> => new Promise((done) => setTimeout(done, 0));
      const kindNow = (): string => document.querySelector('.training-sheet')?.className.slice(15) ?? '';
      const send = (type: string, on: Element, clientX: number, clientY: number): void => {
        const how = { bubbles: true, pointerId: 7, pointerType: 'touch', isPrimary: true, clientX, clientY };
        on.dispatchEvent(new PointerEvent(type, how));
      };
      const under = (x: number, y: number): Element => document.elementFromPoint(x, y) ?? document.body;
      // Corners are round: a finger there is beside the button.
      const inside = (value: number, least: number, most: number): number =>
        Math.min(most - 4, Math.max(least + 4, value));
      /** One finger: where it came down. */
      const touch = (button: Element, off: boolean): readonly [number, number] => {
        const { left, right, top, bottom } = button.getBoundingClientRect();
        const x = inside(left + ((right - left) * draw(1000)) / 1000, left, right);
        const y = inside(top + ((bottom - top) * draw(1000)) / 1000, top, bottom);
        send('pointerdown', button, x, y);
        const upX = off ? x : inside(x + draw(25) - 12, left, right);
        const upY = off ? Math.max(0, y - 200) : inside(y + draw(25) - 12, top, bottom);
        send('pointermove', under(upX, upY), upX, upY);
        send('pointerup', under(upX, upY), upX, upY);
        return [x, y];
      };
      const changed: string[] = [];
      const told = { finished: 0, slid: 0, doubled: 0, changed };
      while (told.finished < many) {
        const kind = kindNow();
        if (kind.startsWith('finished')) told.finished += 1;
        const buttons = kind.startsWith('question') ? '.training-page > .answers .tap' : '#training-main';
        const button = document.querySelector(kind.startsWith('finished') ? '.bar .tap' : buttons);
        if (button === null) throw new Error(`nothing to tap on ${kind}`);
        button.scrollIntoView({ block: 'nearest' });
        const before = look();
        if (draw(5) === 0) {
          told.slid += 1;
          touch(button, true);
          await turn();
          if (look() !== before) changed.push(`slid off on ${kind}: ${parting(before, look())}`);
        }
        const tapped = performance.now();
        const [x, y] = touch(button, false);
        const at = `${Math.round(x)}, ${Math.round(y)} of ${innerHeight}`;
        for (let waits = 0; look() === before; waits += 1) {
          if (waits > 500) throw new Error(`a tap on ${kind} at ${at} was lost`);
          await turn();
        }
        if (draw(2) === 0) {
          // The same place a moment later, whatever stands there now.
          const after = look();
          const on = under(x, y);
          window.ahead += 60 + draw(480);
          // On a machine that was busy meanwhile it is no second of two any more.
          if (performance.now() - tapped < SECOND_OF_TWO_MS) {
            told.doubled += 1;
            send('pointerdown', on, x, y);
            send('pointerup', under(x, y), x, y);
            for (let waits = 0; waits < 4; waits += 1) await turn();
          }
          if (look() !== after) changed.push(`tapped twice on ${kind}: ${parting(after, look())}`);
        }
        window.ahead += 700;
      }
      return told;
    },
    [sessions, from] as const,
  );

test(`${SESSIONS} sessions with trembling hands: every set is marked once, and nothing is answered by a second tap`, {
  timeout: 180_000 + 5000 * SESSIONS,
}, async () => {
  for (let done = 0; done < SESSIONS; done += ON_ONE_PHONE) {
    const sessions = Math.min(ON_ONE_PHONE, SESSIONS - done);
    const page = await open();
    await toTraining(page);
    const told = await tremble(page, sessions, 7919 + done);
    expect(told).toMatchObject({ finished: sessions, changed: [] });
    expect(Math.min(told.slid, told.doubled)).toBeGreaterThan(2 * sessions);
    const events: readonly Kept[] = await eventsIn(page);
    const keys = events.flatMap(({ kind, key }) => (kind === 'set' && key !== undefined ? [key] : []));
    const planned = Array.from({ length: sessions }, (_, i) => keysOf(issued.sent, i + 1)).flat();
    expect([...keys].sort()).toEqual([...planned].sort());
    const others = events.map(({ kind }) => kind).filter((kind) => kind !== 'set' && kind !== 'reserve');
    expect(others).toEqual(Array.from({ length: sessions }, () => ['opened', 'closed']).flat());
    // Every answer is the first of its list, the one that was meant.
    const answers = events.filter(({ kind }) => kind !== 'set');
    expect(
      new Set(answers.flatMap(({ today, effort }) => [today, effort]).filter((said) => said !== undefined)),
    ).toEqual(new Set(['as usual', 0]));
    expect(answers.filter(({ kind, reps }) => kind === 'reserve' && reps !== 0)).toEqual([]);
    expect(answers.filter(({ kind }) => kind === 'reserve').length).toBeGreaterThan(sessions);
    await page.context().close();
  }
});

const STATES = ['to do', 'done', 'easier', 'left out', 'extra'] as const;

test.each(['none', 'active'] as const)(
  'five states of the tally differ in shape alone, forced colours: %s',
  async (forcedColors) => {
    const page = await open();
    await page.emulateMedia({ forcedColors });
    await page.evaluate(() => {
      location.hash = '#how-to';
    });
    await page.waitForSelector('#how-to .key svg', { state: 'visible' });
    // In grey, so that no colour can tell what shape does not.
    await page.evaluate(() => {
      const sheet = new CSSStyleSheet();
      sheet.replaceSync('html { filter: grayscale(1) }');
      document.adoptedStyleSheets = [sheet];
    });
    const marks = page.locator('#how-to .key svg');
    expect(await marks.count()).toBe(5);
    const shots: string[] = [];
    for (let i = 0; i < 5; i += 1) shots.push((await marks.nth(i).screenshot()).toString('base64'));
    expect(new Set(shots).size).toBe(5);
    // The fifth of a row crosses the four before it, and tells its state beside them.
    const fifths = STATES.map((state) => {
      const row = [...Array<Mark>(4).fill('done'), state].map((mark, place) => ({ mark, key: `${place}` }));
      return renderToString(h(Tally, { marks: row, label: '' }));
    });
    await page.evaluate((drawn) => {
      const key = document.querySelector('#how-to .key');
      if (key) key.innerHTML = drawn.map((svg) => `<li style="padding: 12px">${svg}</li>`).join('');
    }, fifths);
    const rows = page.locator('#how-to .key li');
    expect(await rows.count()).toBe(5);
    const looks: string[] = [];
    for (let i = 0; i < 5; i += 1) looks.push((await rows.nth(i).screenshot()).toString('base64'));
    expect(new Set(looks).size).toBe(5);
    await page.context().close();
  },
);
