/**
 * `npm run bench`: times and sizes, as ratios against bare reference code or outside programs in the same run.
 * `npm run bench -- paper memory` runs these parts alone. Prints a table; judges nothing. The demo studio is the corpus.
 */
import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { bookletOf, type Demo, planOf, readDemo, withBuild } from './demo.js';
import { measureDrawings } from './drawings.js';
import { engineSize } from './engine-size.js';
import { hosted, painted } from './hosted.js';
import { measureLibrary } from './library-search.js';
import { memory, paper } from './papers.js';
import { planning } from './planning.js';
import { startUp } from './start-up.js';
import { kb, ms, row } from './table.js';
import { walking } from './walking.js';

function versions(): void {
  process.stdout.write(`Node ${process.versions.node}, ${process.platform} ${process.arch}\n`);
  for (const [program, flag] of [
    ['chromium', '--version'],
    ['qpdf', '--version'],
  ] as const) {
    process.stdout.write(`${execFileSync(program, [flag], { encoding: 'utf8' }).split('\n')[0] ?? ''}\n`);
  }
  process.stdout.write('\n');
}

async function inBrowser(look: (browser: Browser) => Promise<void>): Promise<void> {
  const browser = await chromium.launch({
    executablePath: '/usr/bin/chromium',
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
  try {
    await look(browser);
  } finally {
    await browser.close();
  }
}

async function library({ content }: Demo, browser: Browser): Promise<void> {
  const { exercises, madeMs, sizes, found, frame } = await measureLibrary(browser, content.library);
  row(`library of ${exercises}: pages, lists and search, CPU`, ms(madeMs), 'its drawings apart: see drawings');
  for (const [file, size] of sizes) {
    row(`library of ${exercises}: ${file}`, kb(size), `gzip${file === 'search-index.js' ? '; at most 150 KB' : ''}`);
  }
  for (const [typed, taken] of found) row(`  first result after ‘${typed}’, 4 × CPU`, ms(taken), 'at most 50 ms');
  row('  a letter and nothing looked for, 4 × CPU', ms(frame), 'what any key waits for');
}

async function drawings(demo: Demo): Promise<void> {
  const plan = clientPlanOf(planOf(demo));
  const figures = await measureDrawings(demo.content.library.exercises, bookletOf(demo), plan);
  const { cpuMs, drawn, alone, inBooklet } = figures;
  row('drawing an exercise from its table, CPU', ms(cpuMs), `mean of ${drawn}`);
  row('  alone with what moves it, gzip', kb(alone.mean), `largest ${kb(alone.most)}, at most 6 KB`);
  row('  one more in a booklet, gzip', kb(inBooklet.bytes / inBooklet.drawn), 'at most 1.5 KB on average');
  row('  all in a booklet, gzip', kb(inBooklet.bytes), `${inBooklet.drawn} drawings; at most 25 KB`);
}

/** In the order they are run. */
const PARTS: Readonly<Record<string, (demo: Demo) => void | Promise<void>>> = {
  start: startUp,
  planning,
  walk: walking,
  paper: (demo) => inBrowser((browser) => paper(demo, browser)),
  memory,
  phone: (demo) =>
    withBuild(demo, (folder) => {
      hosted(join(folder, 'booklet'));
      return inBrowser((browser) => painted(browser, join(folder, 'booklet')));
    }),
  library: (demo) => inBrowser((browser) => library(demo, browser)),
  drawings,
  engine: engineSize,
};

const asked = process.argv.slice(2);
const unknown = asked.find((name) => !Object.hasOwn(PARTS, name));
if (unknown !== undefined) {
  process.stderr.write(`There is no part ‘${unknown}’. There are: ${Object.keys(PARTS).join(', ')}.\n`);
  process.exit(2);
}
const demo = await readDemo();
versions();
for (const [name, measure] of Object.entries(PARTS)) {
  if (asked.length === 0 || asked.includes(name)) await measure(demo);
}
