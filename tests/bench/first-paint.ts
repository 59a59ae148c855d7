/** How soon a hosted booklet stands on a slow phone, beside an empty page of the same host, and how long it holds it up. */
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { holdPhone } from '../browser/phone.js';
import { serveFolder } from '../browser/serve-folder.js';

/** Slow 4G as Chromium's own tools set it: 400 ms there and back, 1.6 Mbit/s down, 750 kbit/s up; the processor at a quarter. */
const NETWORK = { offline: false, latency: 400, downloadThroughput: 200_000, uploadThroughput: 93_750 };
const SLOWER = 4;
const RUNS = 5;

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
      booklet.push(await measure(browser, served.address));
      empty.push(await measure(browser, `${served.address}empty.html`));
    }
    return { booklet: middle(booklet), empty: middle(empty) };
  } finally {
    await served.close();
  }
}

async function measure(browser: Browser, address: string): Promise<FirstPaint> {
  const context = await holdPhone(browser);
  try {
    const page = await context.newPage();
    const session = await context.newCDPSession(page);
    await session.send('Network.enable');
    await session.send('Network.emulateNetworkConditions', NETWORK);
    await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
    await page.addInitScript(() => {
      const tasks: number[] = [];
      Object.assign(window, { tasks, read: Number.NaN });
      const looking = new MutationObserver(() => {
        if (document.querySelector('.book.ready') === null) return;
        looking.disconnect();
        requestAnimationFrame(() => Object.assign(window, { read: performance.now() }));
      });
      looking.observe(document, { subtree: true, childList: true, attributes: true, attributeFilter: ['class'] });
      new PerformanceObserver((list) => {
        for (const { duration } of list.getEntries()) tasks.push(duration);
      }).observe({ type: 'longtask', buffered: true });
    });
    await page.goto(address, { waitUntil: 'load' });
    await page.waitForLoadState('networkidle');
    return await page.evaluate(() => {
      const paint = performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? Number.NaN;
      const { tasks, read } = window as unknown as { readonly tasks: readonly number[]; readonly read: number };
      return { paint, read, blocking: tasks.reduce((sum, task) => sum + Math.max(0, task - 50), 0) };
    });
  } finally {
    await context.close();
  }
}

const middleOf = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

const middle = (runs: readonly FirstPaint[]): FirstPaint => ({
  paint: middleOf(runs.map(({ paint }) => paint)),
  read: middleOf(runs.map(({ read }) => read)),
  blocking: middleOf(runs.map(({ blocking }) => blocking)),
});
