/**
 * A booklet on paper beside a browser that prints the same booklet's web page: CPU, bytes, and what any number of them
 * holds in memory.
 */
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import type { Booklet } from '../../src/model/booklet.js';
import { invariant } from '../../src/model/result.js';
import { drawBooklet, type Shown } from '../../src/print/draw-booklet.js';
import { bookletOf, type Demo, shownOf, TOP, withBuild } from './demo.js';
import { CLIENT, drawnForms } from './drawn-forms.js';
import { cpuOf, cpuOfChildren, cpuOfPair, median, processFigures } from './measure.js';
import { kb, ms, row } from './table.js';
import { HOW_TO_GET_IT, typstOf } from './typst.js';

const TIMES = 7;

/** Tagged, from the same booklet with the same drawings; with every page of the web booklet, which has no script to hide one. */
export async function paper(demo: Demo, browser: Browser): Promise<void> {
  const booklet = bookletOf(demo);
  const shown = shownOf(demo);
  const begun = process.cpuUsage();
  const single = await drawBooklet(booklet, CLIENT, undefined, shown);
  const first = process.cpuUsage(begun);
  invariant(single.value !== null, 'the booklet can be printed');
  const { length } = single.value;
  const page = await (await browser.newContext({ javaScriptEnabled: false })).newPage();
  const print = (): Promise<Uint8Array> => page.pdf({ format: 'A5', tagged: true, outline: true });
  await withBuild(demo, async (folder) => {
    await page.goto(`file://${join(folder, 'booklet.html')}`);
    const others = await firstOf(demo);
    const ours = await cpuOf(TIMES, () => drawBooklet(booklet, CLIENT, undefined, shown));
    const theirs = await cpuOfChildren(TIMES, print);
    const printed = await print();
    row(
      'tagged A5 booklet with its drawings, five faces, CPU',
      ms(ours),
      `Chromium printing the web booklet ${ms(theirs)}, × ${(theirs / ours).toFixed(1)}; at least 6`,
    );
    row('  the first of a process, its faces opened', ms((first.user + first.system) / 1000), '');
    row('  other clients, each for the first time', ms(others), `of ${OTHERS.length}, where the faces are open`);
    row('its pages', `${pagesIn(single.value)}`, `Chromium ${pagesIn(printed)}`);
    row(
      'its bytes',
      kb(length),
      `Chromium ${kb(printed.length)}, × ${(length / printed.length).toFixed(2)}; at most 0.45`,
    );
    await besideTypst(booklet, shown, length);
    await allForms(booklet, shown, printed.length);
  });
}

const OTHERS = ['maud-ferrier', 'nell-fane', 'odile-marsh', 'sunniva-lund', 'torben-slade'];

/** Lines that were set before are known: of a booklet that is drawn again, more of them than of the next client's. */
async function firstOf(demo: Demo): Promise<number> {
  const taken: number[] = [];
  for (const name of OTHERS) {
    const client = demo.content.clients.find(({ id }) => id === name);
    invariant(client !== undefined, `${name} is a client of the demo`);
    const other = { ...demo, client };
    const [booklet, shown] = [bookletOf(other), shownOf(other)];
    const begun = process.cpuUsage();
    await drawBooklet(booklet, client.id, undefined, shown);
    const { user, system } = process.cpuUsage(begun);
    taken.push((user + system) / 1000);
  }
  return median(taken);
}

const pagesIn = (bytes: Uint8Array | null): number =>
  Buffer.from(bytes ?? [])
    .toString('latin1')
    .match(/\/Type \/Page\b/g)?.length ?? 0;

/** Of the same words, tables and drawings, in the same faces. */
async function besideTypst(booklet: Booklet, shown: Shown, bytes: number): Promise<void> {
  const set = await typstOf(booklet, shown.drawings ?? new Map());
  if (set === null) {
    row('  beside Typst', 'not measured', `at least 2; ${HOW_TO_GET_IT}`);
    return;
  }
  const [ours, theirs] = await cpuOfPair(TIMES, () => drawBooklet(booklet, CLIENT, undefined, shown), set);
  const { pages, bytes: itsBytes } = set();
  row('  beside Typst, ua-1, CPU', ms(ours), `${ms(theirs)}, × ${(theirs / ours).toFixed(1)}; at least 2`);
  row('  its pages and bytes', `${pages}`, `${kb(itsBytes)}, ours × ${(bytes / itsBytes).toFixed(2)}`);
}

async function allForms(booklet: Booklet, shown: Shown, chromiumBytes: number): Promise<void> {
  const cpuMs = await cpuOf(3, () => drawnForms(booklet, shown));
  const files = (await drawnForms(booklet, shown)).map(({ name, bytes }) => [name, bytes.length] as const);
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
// Compiled, it stands beside this file.
const DRAW_MANY = join(import.meta.dirname, 'draw-many.js');

/** Whether many booklets hold more than few. */
export function memory(): void {
  const peak = (times: number): number => processFigures(1, [DRAW_MANY, String(times)], TOP).peakMiB;
  const few = peak(FEW);
  const many = peak(MANY);
  row(
    `peak of ${MANY} booklets in all forms`,
    `${many.toFixed(0)} MiB`,
    `of ${FEW} ${few.toFixed(0)} MiB; at most 260 MiB`,
  );
}
