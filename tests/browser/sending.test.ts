/**
 * Marks passed on in Chromium in every way a phone offers, from a host and from the phone's own files: what arrives is
 * received as a coach receives it, and is what was done.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { LogEvent } from '../../src/model/log.js';
import type { Sending } from '../../src/phone/send-marks.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { type ReceiveStudio, receiveStudio } from '../app/receive-studio.js';
import { doAsPlanned, markId } from '../session/make-marks.js';
import { holdPhone, openBrowser } from './phone.js';
import { type Served, serveFolder } from './serve-folder.js';

const SENDING = fileURLToPath(new URL('../../src/phone/send-marks.ts', import.meta.url));

/** A page with one button, as bare as can be: the same calls from within a tap as on the screen. */
async function pageWithButton(): Promise<string> {
  const contents = `
    import { fileNameOf, messageOf, passOn, saveText } from ${JSON.stringify(SENDING)};
    document.querySelector('button').addEventListener('click', async () => {
      const { sending, way } = globalThis.wanted;
      const text = messageOf(sending);
      globalThis.text = text;
      const name = fileNameOf('2027-01-06');
      document.documentElement.dataset.passed = way === 'save' ? saveText(text, name) : await passOn(text, name);
    });`;
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: fileURLToPath(new URL('.', import.meta.url)), loader: 'ts' },
    bundle: true,
    write: false,
    format: 'iife',
    target: ['chrome90', 'safari14', 'firefox90'],
    supported: { destructuring: true },
    logLevel: 'silent',
  });
  return `<!doctype html><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'unsafe-inline'"><title>t</title><button>Send</button><script>${outputFiles[0]?.text}</script>`;
}

let folder: string;
let studio: ReceiveStudio;
let browser: Browser;
let served: Served;
let context: BrowserContext;
let ownFile: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'chalkleaf-'));
  studio = receiveStudio(folder);
  const html = await pageWithButton();
  ownFile = join(folder, 'sending.html');
  writeFileSync(ownFile, html);
  served = await serveFolder(new Map([['index.html', new TextEncoder().encode(html)]]), '/ash/');
  browser = await openBrowser();
  context = await holdPhone(browser);
}, 300_000);
afterAll(async () => {
  await browser?.close();
  await served?.close();
  if (folder) rmSync(folder, { recursive: true, force: true });
});

/** Marks of so many sessions, all of days that are over. */
function marksOf(sessions: number): readonly LogEvent[] {
  const { plan } = studio.edition;
  const occurrences = plan.weeks.flatMap((week) => week.sessions.map(({ occurrence }) => occurrence));
  return occurrences
    .slice(0, sessions)
    .flatMap((occurrence) => doAsPlanned(plan, occurrence, { edition: 1, day: '2027-01-05' }));
}

/** Longer together than many a message may be. */
const longNotes = (count: number): readonly LogEvent[] =>
  Array.from({ length: count }, (_, index) => ({
    id: markId(9, index),
    seq: 100_000 + index,
    edition: 1,
    at: '2027-01-05T20:00:00+01:00',
    kind: 'note',
    text: 'The knee was fine, and the last set was slow. '.repeat(20).trim(),
  }));

const sendingOf = (device: string, events: readonly LogEvent[]): Sending => ({
  plan: clientPlanOf(studio.edition.plan, { bookletId: studio.edition.bookletId, standing: 'stands' }),
  device,
  events,
  passedAt: null,
});

type Sheet = 'takes files' | 'takes text' | 'turned back' | 'refuses' | 'none';

/** The phone's own sheet cannot be opened here: in its place stands one that keeps what it was given. */
const sheetOf = (sheet: Sheet): string => `
  globalThis.given = null;
  const sheet = ${JSON.stringify(sheet)};
  const define = (name, value) => Object.defineProperty(navigator, name, { value, configurable: true });
  define('canShare', sheet === 'none' ? undefined : ({ files }) => sheet !== 'takes text' || files === undefined);
  define('share', sheet === 'none' ? undefined : async ({ files, text }) => {
    if (!navigator.userActivation.isActive) throw new DOMException('no tap', 'NotAllowedError');
    if (sheet === 'turned back') throw new DOMException('', 'AbortError');
    if (sheet === 'refuses') throw new DOMException('', 'NotAllowedError');
    globalThis.given = files === undefined ? { text } : { name: files[0].name, type: files[0].type, text: await files[0].text() };
  });
`;

interface Outcome {
  readonly passed: string;
  readonly given: { readonly name?: string; readonly type?: string; readonly text: string } | null;
  readonly text: string;
}

async function tap(page: Page, sheet: Sheet, sending: Sending, way = 'pass'): Promise<Outcome> {
  await page.evaluate(sheetOf(sheet));
  await page.evaluate(
    `globalThis.wanted = ${JSON.stringify({ sending, way })}; delete document.documentElement.dataset.passed;`,
  );
  await page.locator('button').tap();
  await page.locator('html[data-passed]').waitFor();
  return page.evaluate('({ passed: document.documentElement.dataset.passed, given, text })');
}

/** As the coach receives it: the file is there, and its marks are those that were made. */
async function expectReceived(device: string, text: string, events: readonly LogEvent[]): Promise<void> {
  const { code, out } = await studio.receiveHere(studio.put(`${device}.txt`, text));
  expect(out).not.toMatch(/error|refused/i);
  expect(code).toBe(0);
  const kept: { readonly events: readonly LogEvent[] } = JSON.parse(studio.kept(device));
  expect(kept.events).toEqual(events);
}

describe('from a host', () => {
  test('a file to the phone’s own sheet; a whole block is one message', async () => {
    const page = await context.newPage();
    await page.goto(served.address);
    const events = [...marksOf(99), ...longNotes(80)];
    const { passed, given } = await tap(page, 'takes files', sendingOf('phone-1', events));
    expect(passed).toBe('shared');
    expect(given).toMatchObject({ name: 'marks-2027-01-06.txt', type: 'text/plain' });
    expect(given?.text.match(/^Chalkleaf marks$/gm)).toHaveLength(1);
    expect(given?.text.length).toBeGreaterThan(65_536);
    await expectReceived('phone-1', given?.text ?? '', events);
    await page.close();
  });

  test('words where the sheet takes no files', async () => {
    const page = await context.newPage();
    await page.goto(served.address);
    const events = marksOf(2);
    const { passed, given } = await tap(page, 'takes text', sendingOf('phone-2', events));
    expect(passed).toBe('shared');
    expect(given?.name).toBeUndefined();
    await expectReceived('phone-2', given?.text ?? '', events);
    await page.close();
  });

  test('whoever turns back has passed nothing on, and nothing is copied behind their back', async () => {
    const page = await context.newPage();
    await page.goto(served.address);
    const { passed, given } = await tap(page, 'turned back', sendingOf('phone-3', marksOf(1)));
    expect([passed, given]).toEqual(['not passed', null]);
    await page.close();
  });

  test.each(['refuses', 'none'] as const)('copied where the sheet %s', async (sheet) => {
    await context.grantPermissions(['clipboard-read', 'clipboard-write']);
    const page = await context.newPage();
    await page.goto(served.address);
    const device = `phone-copy-${sheet}`;
    const events = marksOf(2);
    const { passed } = await tap(page, sheet, sendingOf(device, events));
    expect(passed).toBe('copied');
    await expectReceived(device, await page.evaluate('navigator.clipboard.readText()'), events);
    await page.close();
  });

  test('what was received already is known, and what is new is added', async () => {
    const page = await context.newPage();
    await page.goto(served.address);
    for (const sessions of [1, 3, 3]) {
      const events = marksOf(sessions);
      const { given } = await tap(page, 'takes files', sendingOf('phone-5', events));
      await expectReceived('phone-5', given?.text ?? '', events);
    }
    await page.close();
  });
});

describe('from the phone’s own files', () => {
  test('copied by hand where nothing else is offered, and saved as a file', async () => {
    const page = await context.newPage();
    await page.goto(pathToFileURL(ownFile).href);
    await page.evaluate(`Object.defineProperty(navigator, 'clipboard', { value: undefined, configurable: true })`);
    const events = marksOf(2);
    const { passed, text } = await tap(page, 'none', sendingOf('phone-6', events));
    expect(passed).toBe('copied');
    expect(await page.locator('textarea').count()).toBe(0);
    await page.evaluate(`document.body.insertAdjacentHTML('beforeend', '<textarea></textarea>')`);
    await page.locator('textarea').focus();
    await page.keyboard.press('Control+V');
    expect(await page.locator('textarea').inputValue()).toBe(text);

    const saving = page.waitForEvent('download');
    expect((await tap(page, 'none', sendingOf('phone-7', events), 'save')).passed).toBe('saved');
    const download = await saving;
    expect(download.suggestedFilename()).toBe('marks-2027-01-06.txt');
    await expectReceived('phone-7', readFileSync(await download.path(), 'utf8'), events);
    await page.close();
  });
});
