/**
 * A language that runs from right to left, rehearsed with a made-up one: the page runs that way, its margin and tally with
 * it, and a load and its reps still read as they are written. What is printed refuses it.
 */
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { BookBody } from '../../layouts/book/book.js';
import { bookOf } from '../../layouts/book/leaves.js';
import { WeekTally } from '../../layouts/training/week-tally.js';
import { webSources } from '../../src/app/web-sources.js';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import type { Booklet } from '../../src/model/booklet.js';
import { rowId, setKey } from '../../src/model/identity.js';
import { drawBooklet } from '../../src/print/draw-booklet.js';
import { filePolicy } from '../../src/web/policy.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import { renderPage } from '../../src/web/render-page.js';
import type { Speech } from '../../src/words/speech.js';
import { speechOf } from '../../src/words/speech.js';
import { everyShapeLibrary } from '../fixtures/every-shape-library.js';
import { everyShapePlan } from '../fixtures/every-shape-plan.js';
import { client } from '../fixtures/library.js';
import { phoneSpeechOf } from '../fixtures/phone-speech.js';
import { rehearsedPhoneSpeech, rehearsedSpeech } from '../fixtures/rehearsed-language.js';
import { everyShapeSent } from './every-shape-booklet.js';
import { holdPhone, openBrowser } from './phone.js';
import { rehearsedScreens } from './rehearsed-screens.js';

const made = (speech: Speech): Booklet =>
  composeBooklet({ library: everyShapeLibrary, client, plan: everyShapePlan(4), speech });
const rehearsed = rehearsedSpeech();
const booklet = made(rehearsed);

let browser: Browser;
let context: BrowserContext;
let folder: string;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'right-to-left-'));
  const parts = await prepareShell(webSources());
  for (const [name, of, speech] of [
    ['rtl', booklet, rehearsed],
    ['ltr', made(speechOf('en-GB')), speechOf('en-GB')],
  ] as const) {
    const page = renderPage({
      title: of.title,
      language: of.language,
      direction: of.direction,
      policy: filePolicy([parts.style], [parts.script]),
      styles: [parts.style.text],
      styleFiles: [],
      scripts: [parts.script.text],
      body: renderToString(BookBody({ book: bookOf(of, speech.words) })),
    });
    await writeFile(join(folder, `${name}.html`), page);
  }
  for (const [name, direction, speech] of [
    ['training-rtl', 'rtl', rehearsedPhoneSpeech()],
    ['training-ltr', 'ltr', phoneSpeechOf('en-GB')],
  ] as const) {
    const page = renderPage({
      title: name,
      language: speech.language,
      direction,
      policy: filePolicy([parts.style], []),
      styles: [parts.style.text],
      styleFiles: [],
      scripts: [],
      body: `<div id="training">${rehearsedScreens(everyShapeSent, speech)}</div>`,
    });
    await writeFile(join(folder, `${name}.html`), page);
  }
  browser = await openBrowser();
  context = await holdPhone(browser);
});
afterAll(async () => {
  await browser?.close();
  await rm(folder, { recursive: true, force: true });
});

const LEAVES = booklet.parts.length;
const TURN = 'w1-b--carry';
const keyOf = (ordinal: number) =>
  setKey({ block: 1, occurrence: 1, row: rowId('carry'), side: 'both', kind: 'work', ordinal });
const TALLY = renderToString(
  h(WeekTally, {
    tally: [{ marks: [1, 2].map((ordinal) => ({ key: keyOf(ordinal), state: 'done' as const })) }],
    words: phoneSpeechOf('en-GB').words,
  }),
);

async function open(name: 'rtl' | 'ltr', leaf: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto(`${pathToFileURL(join(folder, `${name}.html`)).href}#${leaf}`);
  await page.locator(`#${leaf}`).waitFor();
  return page;
}

/** Every load × reps that stands on one line, and whether its characters stand in their order from left to right. */
const readFigures = (page: Page) =>
  page.evaluate(() => {
    const found: { text: string; inOrder: boolean }[] = [];
    for (const leaf of document.querySelectorAll<HTMLElement>('.leaf')) leaf.hidden = false;
    for (const details of document.querySelectorAll('details')) details.open = true;
    const blocks = [...document.querySelectorAll('main :is(p, td, li, b, caption, summary, h2, button)')];
    for (const block of blocks.filter((one) => one.querySelector('p, li, td, ul') === null)) {
      const letters: { sign: string; left: number; top: number }[] = [];
      const walker = document.createTreeWalker(block, NodeFilter.SHOW_TEXT);
      for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
        const text = node.textContent ?? '';
        for (let at = 0; at < text.length; at += 1) {
          const range = document.createRange();
          range.setStart(node, at);
          range.setEnd(node, at + 1);
          const box = range.getBoundingClientRect();
          letters.push({ sign: text[at] ?? '', left: box.left, top: box.bottom });
        }
      }
      const whole = letters.map(({ sign }) => sign).join('');
      for (const match of whole.matchAll(
        /\d[\d.]*(?:[\s\u00a0]kg|[\s\u00a0]lb)?[\s\u00a0]?×[\s\u00a0]?\d[\d.]*(?:[–-]\d+)*/g,
      )) {
        const own = letters.slice(match.index, match.index + match[0].length).filter(({ sign }) => sign.trim() !== '');
        // What is not shown stands nowhere.
        if (own.every(({ left, top }) => left === 0 && top === 0)) continue;
        if (own.some(({ top }) => Math.abs(top - (own[0]?.top ?? 0)) > 12)) continue;
        const inOrder = own.every(({ left }, i) => i === 0 || left > (own[i - 1]?.left ?? 0));
        found.push({ text: match[0], inOrder });
      }
    }
    return found;
  });

describe('a page from right to left', () => {
  test('runs that way, and an author’s own lines the other', async () => {
    const page = await open('rtl', TURN);
    const directions = await page.evaluate(() => {
      const of = (selector: string): string => {
        const found = document.querySelector(selector);
        return found === null ? 'none' : getComputedStyle(found).direction;
      };
      return [document.documentElement.dir, of('.book'), of('.book h2'), of('.book bdi[lang|="en"]')];
    });
    expect(directions).toEqual(['rtl', 'rtl', 'rtl', 'ltr']);
    await page.close();
  });

  test('3 × 8 always reads 3 × 8', async () => {
    const page = await open('rtl', TURN);
    const figures = await readFigures(page);
    expect(figures.length).toBeGreaterThan(60);
    expect(figures.filter(({ inOrder }) => !inOrder)).toEqual([]);
    expect(new Set(figures.map(({ text }) => text.replace(/\s/g, ' '))).size).toBeGreaterThan(5);
    await page.close();
  });

  test('would be told from one that read 8 × 3', async () => {
    const page = await open('rtl', TURN);
    await page.evaluate(() => {
      const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
      for (let node = walker.nextNode(); node !== null; node = walker.nextNode())
        node.textContent = (node.textContent ?? '').replace(/[\u2066\u2069]/g, '');
    });
    const figures = await readFigures(page);
    expect(figures.filter(({ inOrder }) => !inOrder).length).toBeGreaterThan(10);
    await page.close();
  });

  test('has its margin with the tally of a week, and the way on, mirrored', async () => {
    const places = async (name: 'rtl' | 'ltr') => {
      const page = await open(name, 'week-1');
      const read = await page.evaluate((tally) => {
        // As the phone puts it there; no script does on these pages.
        const margin = document.createElement('div');
        margin.innerHTML = tally;
        document.querySelector('#week-1 .turns li')?.append(margin);
        const of = (selector: string): DOMRect => {
          const found = document.querySelector(`#week-1 ${selector}`);
          if (found === null) throw new Error(selector);
          return found.getBoundingClientRect();
        };
        const stroke = of('.turns svg path');
        const svg = of('.turns svg');
        return {
          // How far from the start of the page, whichever side that is.
          margin: Math.round(svg.left + svg.width / 2),
          back: Math.round(of('.on .back').left + of('.on .back').width / 2),
          strokes: Math.round(stroke.left + stroke.width / 2 - svg.left - svg.width / 2),
        };
      }, TALLY);
      const overflow = await page.evaluate(() => document.documentElement.scrollWidth > innerWidth);
      expect(overflow).toBe(false);
      await page.close();
      return read;
    };
    const [rtl, ltr] = [await places('rtl'), await places('ltr')];
    const mirrored = (x: number): number => 360 - x;
    expect(Math.abs(rtl.margin - mirrored(ltr.margin))).toBeLessThanOrEqual(2);
    expect(rtl.margin).toBeLessThan(120);
    expect(rtl.back).toBeGreaterThan(180);
    expect(ltr.back).toBeLessThan(180);
    expect(Math.sign(rtl.strokes)).toBe(-Math.sign(ltr.strokes));
    expect(Math.abs(rtl.strokes + ltr.strokes)).toBeLessThanOrEqual(1);
  });
});

describe('training from right to left', () => {
  const openTraining = async (name: 'rtl' | 'ltr'): Promise<Page> => {
    const page = await context.newPage();
    await page.goto(pathToFileURL(join(folder, `training-${name}.html`)).href);
    return page;
  };

  test('3 × 8 reads 3 × 8 on every screen of a session, and nothing is wider than the phone', async () => {
    const page = await openTraining('rtl');
    const figures = await readFigures(page);
    expect(figures.length).toBeGreaterThan(20);
    expect(figures.filter(({ inOrder }) => !inOrder)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth > innerWidth)).toBe(false);
    expect(await page.evaluate(() => document.body.textContent)).toMatch(/[א-ת]{3}/);
    await page.close();
  });

  test('the tally, the headings and the buttons of a set are mirrored', async () => {
    const read = async (name: 'rtl' | 'ltr') => {
      const page = await openTraining(name);
      const found = await page.evaluate(() => {
        const sheet = document.querySelector('.training-sheet.set');
        const centre = (selector: string): number => {
          const box = sheet?.querySelector(selector)?.getBoundingClientRect();
          return box === undefined ? Number.NaN : Math.round(box.left + box.width / 2);
        };
        const taps = [...(sheet?.querySelectorAll('.bar .tap:not(.filled)') ?? [])].map((tap) => {
          const box = tap.getBoundingClientRect();
          return Math.round(box.left + box.width / 2);
        });
        return { tally: centre('svg'), first: taps[0] ?? 0, second: taps[1] ?? 0 };
      });
      await page.close();
      return found;
    };
    const [rtl, ltr] = [await read('rtl'), await read('ltr')];
    expect(ltr.tally).toBeGreaterThan(180);
    expect(Math.abs(rtl.tally - (360 - ltr.tally))).toBeLessThanOrEqual(2);
    expect(ltr.first).toBeLessThan(ltr.second);
    expect(rtl.first).toBeGreaterThan(rtl.second);
  });
});

test('what is printed refuses it, and says why', async () => {
  expect(LEAVES).toBeGreaterThan(5);
  const { value, problems } = await drawBooklet(booklet, client.id);
  expect(value).toBeNull();
  expect(problems.map(({ code, data }) => [code, data])).toEqual([
    ['not-printable', expect.objectContaining({ why: 'direction' })],
  ]);
});
