/**
 * A booklet on paper beside a browser that prints the same booklet's web page: CPU, bytes, and what any number of them
 * holds in memory.
 */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import type { Booklet } from '../../src/model/booklet.js';
import { clientId } from '../../src/model/identity.js';
import { invariant } from '../../src/model/result.js';
import { drawBooklet, type Shown } from '../../src/print/draw-booklet.js';
import { drawForms, type PaperFile } from '../../src/print/draw-forms.js';
import { bookletOf, type Demo, shownOf, TOP, withBuild } from './demo.js';
import { cpuOf, cpuOfChildren, processFigures } from './measure.js';
import { kb, ms, row } from './table.js';

const CLIENT = clientId('rowan-ashby');
/** As long as a real one with its key. */
const ADDRESS = {
  whole: `https://slate-yard.example/${'7f3a9c2e'.repeat(4)}/#open=${'q1Zb8x0Kf3v'.repeat(4).slice(0, 43)}`,
  open: `https://slate-yard.example/${'7f3a9c2e'.repeat(4)}/`,
};
const TIMES = 7;

async function drawn(booklet: Booklet, shown: Shown): Promise<readonly PaperFile[]> {
  const { value } = await drawForms(booklet, CLIENT, ADDRESS, shown);
  invariant(value.length > 0, 'the booklet can be printed');
  return value;
}

/** Tagged, from the same booklet with the same drawings; with every page of the web booklet, which has no script to hide one. */
export async function paper(demo: Demo, browser: Browser): Promise<void> {
  const booklet = bookletOf(demo);
  const shown = shownOf(demo);
  const single = await drawBooklet(booklet, CLIENT, undefined, shown);
  invariant(single.value !== null, 'the booklet can be printed');
  const { length } = single.value;
  const page = await (await browser.newContext({ javaScriptEnabled: false })).newPage();
  const print = (): Promise<Uint8Array> => page.pdf({ format: 'A5', tagged: true, outline: true });
  await withBuild(demo, async (folder) => {
    await page.goto(`file://${join(folder, 'booklet.html')}`);
    const ours = await cpuOf(TIMES, () => drawBooklet(booklet, CLIENT, undefined, shown));
    const theirs = await cpuOfChildren(TIMES, print);
    const printed = await print();
    row(
      'tagged A5 booklet with its drawings, five faces, CPU',
      ms(ours),
      `Chromium printing the web booklet ${ms(theirs)}, × ${(theirs / ours).toFixed(1)}; at least 6`,
    );
    row('its pages', `${pagesIn(single.value)}`, `Chromium ${pagesIn(printed)}`);
    row(
      'its bytes',
      kb(length),
      `Chromium ${kb(printed.length)}, × ${(length / printed.length).toFixed(2)}; at most 0.45`,
    );
    typst();
    await allForms(booklet, shown, printed.length);
  });
}

const pagesIn = (bytes: Uint8Array | null): number =>
  Buffer.from(bytes ?? [])
    .toString('latin1')
    .match(/\/Type \/Page\b/g)?.length ?? 0;

/** Set beside ours only where it is installed, and then by hand: it reads no booklet of ours. */
function typst(): void {
  const { stdout } = spawnSync('typst', ['--version'], { encoding: 'utf8' });
  row('  beside Typst', 'not measured', stdout ? `${stdout.trim()} is installed` : 'Typst is not installed here');
}

async function allForms(booklet: Booklet, shown: Shown, chromiumBytes: number): Promise<void> {
  const cpuMs = await cpuOf(3, () => drawn(booklet, shown));
  const files = (await drawn(booklet, shown)).map(({ name, bytes }) => [name, bytes.length] as const);
  const [first] = files;
  row(
    'all forms on paper, CPU',
    ms(cpuMs),
    `${files.length} files, ${kb(files.reduce((sum, [, size]) => sum + size, 0))}`,
  );
  for (const [name, size] of files) {
    const alone = first === undefined ? '' : `; × ${(size / first[1]).toFixed(2)} of the single pages`;
    row(`  ${name}`, kb(size), `Chromium’s one form × ${(size / chromiumBytes).toFixed(2)}${alone}`);
  }
}

const FEW = 4;
const MANY = 16;

/** Whether many booklets hold more than few. `main` is run once more for each, as a process of its own. */
export function memory(main: string): void {
  const peak = (times: number): number => processFigures(1, [main, DRAW, String(times)], TOP).peakMiB;
  const few = peak(FEW);
  const many = peak(MANY);
  row(
    `peak of ${MANY} booklets in all forms`,
    `${many.toFixed(0)} MiB`,
    `of ${FEW} ${few.toFixed(0)} MiB; at most 260 MiB`,
  );
}

/** What such a process is asked. */
export const DRAW = 'draw';

/** Each drawn and let go, so many times, in book print and in large print in turn. */
export async function drawMany(demo: Demo, times: number): Promise<void> {
  const booklet = bookletOf(demo);
  const shown = shownOf(demo);
  for (let i = 0; i < times; i += 1) await drawn(i % 2 === 0 ? booklet : { ...booklet, largePrint: true }, shown);
}
