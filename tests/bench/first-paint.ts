/** How soon a hosted booklet stands on a slow phone, beside an empty page of the same host, and how long it holds it up. */
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { serveFolder } from '../browser/serve-folder.js';
import { askPage } from './unheard-page.js';

/** Slow 4G as Chromium's own tools set it: 400 ms there and back, 1.6 Mbit/s down, 750 kbit/s up; the processor at a quarter. */
const SLOW = { latency: 400, downloadThroughput: 200_000, uploadThroughput: 93_750, processor: 4 };
const RUNS = 5;
/** After the training screens have come nothing more is begun by itself. */
const QUIET_MS = 1500;

export interface FirstPaint {
  /** Milliseconds to the first contentful paint. */
  readonly paint: number;
  /** Milliseconds until the cover can be read; of an empty page, not a number. */
  readonly read: number;
  /** Milliseconds beyond 50 in each task longer than that, until all is quiet. */
  readonly blocking: number;
}

const EMPTY = '<!doctype html><html lang="en"><meta charset="utf-8"><title>Empty</title><p>Empty</p></html>';

export async function firstPaints(
  browser: Browser,
  folder: string,
): Promise<{ readonly booklet: FirstPaint; readonly empty: FirstPaint }> {
  const files = new Map<string, Uint8Array>([['empty.html', new TextEncoder().encode(EMPTY)]]);
  for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' })) {
    if (statSync(join(folder, name)).isFile()) files.set(name, readFileSync(join(folder, name)));
  }
  const served = await serveFolder(files, '/b/', { gzip: true });
  try {
    const booklet: FirstPaint[] = [];
    const empty: FirstPaint[] = [];
    for (let run = 0; run < RUNS; run += 1) {
      booklet.push(await measure(browser, served.address, 'booklet'));
      empty.push(await measure(browser, `${served.address}empty.html`, 'empty'));
    }
    return { booklet: middle(booklet), empty: middle(empty) };
  } finally {
    await served.close();
  }
}

declare global {
  interface Window {
    tell: (text: string) => void;
  }
}

/** The page itself says when all is quiet: to be asked would hold it up. */
function watch(isBooklet: boolean, quietMs: number): void {
  const tasks: number[] = [];
  let read = Number.NaN;
  const tell = (): void => {
    const paint = performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? Number.NaN;
    const blocking = tasks.reduce((sum, task) => sum + Math.max(0, task - 50), 0);
    window.tell([paint, read, blocking].join(' '));
  };
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) tasks.push(duration);
  }).observe({ type: 'longtask', buffered: true });
  if (!isBooklet) {
    addEventListener('load', () => setTimeout(tell, quietMs));
    return;
  }
  let stands = false;
  const looking = new MutationObserver(() => {
    if (!stands && document.querySelector('.leaf.cover') !== null) {
      stands = true;
      requestAnimationFrame(() => {
        read = performance.now();
      });
    }
    if (document.getElementById('training') === null) return;
    looking.disconnect();
    setTimeout(tell, quietMs);
  });
  looking.observe(document, { subtree: true, childList: true });
}

async function measure(browser: Browser, address: string, what: 'booklet' | 'empty'): Promise<FirstPaint> {
  const told = await askPage(browser, address, `(${watch})(${what === 'booklet'}, ${QUIET_MS})`, SLOW);
  const [paint = Number.NaN, read = Number.NaN, blocking = Number.NaN] = told.split(' ').map(Number);
  return { paint, read, blocking };
}

const middleOf = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

const middle = (runs: readonly FirstPaint[]): FirstPaint => ({
  paint: middleOf(runs.map(({ paint }) => paint)),
  read: middleOf(runs.map(({ read }) => read)),
  blocking: middleOf(runs.map(({ blocking }) => blocking)),
});
