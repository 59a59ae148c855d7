/** A library of 2,000 exercises as a phone gets it: bytes of its first page and of its search, and how soon a typed word finds. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';
import type { Browser } from 'playwright-core';
import { webSources } from '../../src/app/web-sources.js';
import { publicPartOf } from '../../src/model/public-library.js';
import type { Library } from '../../src/model/studio.js';
import { renderLibrary } from '../../src/web/library/render-library.js';
import { manyExercises } from '../search/many-exercises.js';

const MANY = 2000;
const SLOWER = 4;
const RUNS = 9;
/** Two letters, the beginning of a name, a name misspelt, and everyday words. */
const TYPED = ['go', 'gobl', 'goblit squt', 'knee chair'] as const;

export interface LibraryFigures {
  readonly exercises: number;
  /** CPU milliseconds to make its pages, its lists and its search, without drawings. */
  readonly madeMs: number;
  /** Bytes by file, under gzip. */
  readonly sizes: readonly (readonly [file: string, gzip: number])[];
  /** Milliseconds from the key to the frame with the answer on a processor at a quarter, the middle of some runs. */
  readonly found: readonly (readonly [typed: string, milliseconds: number])[];
  /** The same where a key changes one letter and nothing is looked for: what is waited for a frame, on this machine, at this time. */
  readonly frame: number;
}

export async function measureLibrary(browser: Browser, library: Library): Promise<LibraryFigures> {
  const out = mkdtempSync(join(tmpdir(), 'chalkleaf-bench-library-'));
  try {
    const demo = publicPartOf(library);
    const before = process.cpuUsage();
    await renderLibrary({
      library: { ...demo, exercises: manyExercises(demo.exercises, MANY) },
      rulebook: [],
      out,
      fonts: [],
      sources: webSources(),
    });
    const { user, system } = process.cpuUsage(before);
    const sizes = ['index.html', 'search-index.js', 'search.js'].map((file): readonly [string, number] => [
      file,
      gzipSync(readFileSync(join(out, file))).length,
    ]);
    const times = await timesIn(browser, pathToFileURL(join(out, 'index.html')).href);
    return { exercises: MANY, madeMs: (user + system) / 1000, sizes, ...times };
  } finally {
    rmSync(out, { recursive: true, force: true });
  }
}

const middle = (times: readonly number[]): number =>
  [...times].sort((a, b) => a - b)[Math.floor(RUNS / 2)] ?? Number.NaN;

async function timesIn(browser: Browser, address: string): Promise<Pick<LibraryFigures, 'found' | 'frame'>> {
  const page = await browser.newPage({ viewport: { width: 360, height: 640 } });
  try {
    await page.goto(address);
    await page.focus('#look-for');
    // The index comes once the field has the focus; the first search shows that it has.
    await page.fill('#look-for', 'squat');
    await page.waitForSelector('.found *', { timeout: 60_000 });
    const session = await page.context().newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
    const found: (readonly [string, number])[] = [];
    for (const typed of TYPED) {
      const times: number[] = [];
      for (let run = 0; run < RUNS; run += 1) times.push(await page.evaluate(timeToResults, typed));
      found.push([typed, middle(times)]);
    }
    const frames: number[] = [];
    for (let run = 0; run < RUNS; run += 1) frames.push(await page.evaluate(timeToResults, null));
    return { found, frame: middle(frames) };
  } finally {
    await page.close();
  }
}

/** Runs in the page: empties the field, types, and waits for the frame after the answer came; with `null` a letter is changed in its place. */
async function timeToResults(typed: string | null): Promise<number> {
  const field = document.querySelector<HTMLInputElement>('#look-for');
  const form = field?.form;
  if (!field || !form) throw new Error('the page has no search');
  field.value = '';
  field.dispatchEvent(new Event('input'));
  await new Promise((done) => setTimeout(done, 400));
  const start = performance.now();
  const seen = new Promise<number>((done) => {
    // Where nothing is found the list stays empty, and only what is said changes.
    new MutationObserver((_, looking) => {
      looking.disconnect();
      requestAnimationFrame(() => setTimeout(() => done(performance.now() - start)));
    }).observe(form, { childList: true, characterData: true, subtree: true });
  });
  if (typed === null) {
    const said = form.querySelector('output');
    if (said) said.textContent = said.textContent === 'a' ? 'b' : 'a';
    return seen;
  }
  field.value = typed;
  field.dispatchEvent(new Event('input'));
  return seen;
}
