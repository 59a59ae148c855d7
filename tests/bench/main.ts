/**
 * `npm run bench`: times and sizes, as ratios against bare reference code or outside programs in the same run.
 * Prints a table; judges nothing. The demo studio is the corpus.
 */
import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { brotliCompressSync, gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { chromium } from 'playwright-core';
import { gatherFiles } from '../../src/app/gather-files.js';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import { readFolder } from '../../src/content/read-folder.js';
import { planBlock } from '../../src/engine/plan-block.js';
import { planStrand } from '../../src/engine/plan-strand.js';
import type { Client } from '../../src/model/client.js';
import { dayOfIso } from '../../src/model/day.js';
import { rowId } from '../../src/model/identity.js';
import type { Plan } from '../../src/model/plan.js';
import type { Programme } from '../../src/model/programme.js';
import { invariant } from '../../src/model/result.js';
import type { Content } from '../../src/model/studio.js';
import { drawBooklet } from '../../src/print/draw-booklet.js';
import { sayPlan } from '../../src/words/say-plan.js';
import { type BareStrand, bareWalk } from './bare-walk.js';
import { cpuOf, cpuOfPair, processFigures } from './measure.js';

// Compiled, this file stands in dist/tests/bench.
const TOP = resolve(import.meta.dirname, '..', '..', '..');
const MAIN = join(TOP, 'dist', 'src', 'app', 'main.js');
const TODAY = dayOfIso('2026-11-24');

const row = (what: string, figure: string, against = ''): void => {
  process.stdout.write(`${what.padEnd(58)} ${figure.padStart(12)}   ${against}\n`);
};
const ms = (value: number): string => `${value.toFixed(value < 1 ? 3 : 1)} ms`;
const kb = (bytes: number): string => `${(bytes / 1024).toFixed(1)} KB`;

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

function startUp(): void {
  const node = processFigures(7, ['-e', '0'], TOP);
  const figure = (what: string, args: readonly string[]): void => {
    const { cpuMs, peakMiB } = processFigures(7, [MAIN, ...args], TOP);
    row(what, ms(cpuMs), `Node alone ${ms(node.cpuMs)}; + ${ms(cpuMs - node.cpuMs)}; ${peakMiB.toFixed(0)} MiB`);
  };
  figure('start: --help', ['--help']);
  figure('start: check of the demo', ['check', '--today', '2026-11-24']);
  const out = join(tmpdir(), `chalkleaf-bench-${process.pid}`);
  figure('build of one client, all outputs', ['build', '--only', 'rowan-ashby', '--today', '2026-11-24', '--out', out]);
  execFileSync('rm', ['-rf', out]);
}

function planOf(content: Content, client: Client): Plan {
  invariant(TODAY !== undefined, 'the day exists');
  const { value } = planBlock({ library: content.library, client, today: TODAY, edition: 0 });
  invariant(value !== null, `${client.id} is planned`);
  return value;
}

/** The client's programme with every session's rows repeated under new names, until it has so many. */
function longer(
  content: Content,
  client: Client,
  times: number,
  weeks: number,
): { content: Content; client: Client; rows: number } {
  let rows = 0;
  const programmes = content.library.programmes.map((programme): Programme => {
    if (programme.id !== client.programme) return programme;
    const curve = Array.from({ length: weeks }, (_, i) => programme.curve[i % programme.curve.length]).flatMap(
      (week) => (week === undefined ? [] : [week]),
    );
    const sessions = programme.sessions.map((session) => ({
      ...session,
      blocks: session.blocks.map((block) => ({
        ...block,
        rows: Array.from({ length: times }, (_, i) =>
          block.rows.map((each) => ({ ...each, id: rowId(`${each.id}-${i}`) })),
        ).flat(),
      })),
    }));
    rows = sessions.flatMap((session) => session.blocks.flatMap((block) => block.rows)).length;
    const ids = sessions.flatMap((session) => session.blocks.flatMap((block) => block.rows.map((each) => each.id)));
    return { ...programme, curve, sessions, neverCut: ids, cutFirst: [] };
  });
  return {
    content: { ...content, library: { ...content.library, programmes } },
    client: { ...client, minutes: 1000 },
    rows,
  };
}

async function planning(content: Content, client: Client): Promise<void> {
  for (const [times, weeks] of [
    [1, 6],
    [2, 6],
    [3, 6],
    [3, 12],
  ] as const) {
    const made = longer(content, client, times, weeks);
    const taken = await cpuOf(15, () => planOf(made.content, made.client));
    row(`planning one client, ${weeks} weeks × ${made.rows} rows`, ms(taken));
  }
  const plan = planOf(content, client);
  const strands = plan.inputs.strands.filter((strand) => strand.capacity !== null && strand.equation === 'epley');
  const bare = strands.map((strand): BareStrand => {
    const version = strand.versions[strand.start?.version ?? 0];
    const reps = Math.floor((strand.capacity?.reps ?? 0) / 10);
    return {
      share: version?.share ?? 0,
      bodyMass: strand.bodyMass,
      loads: version?.loads.map((load) => load.grams) ?? [0],
      test: { load: strand.start?.load ?? 0, reps, reserve: 0 },
      bottom: strand.bottom,
      top: strand.top,
      floor: 2,
      gain: strand.gain,
      weeks: strand.occurrences.map((each) => [each.asked / 10, each.sets, each.easy]),
      tempi: strand.tempi.map((tempo) => tempo.factor),
    };
  });
  const many = 200;
  const [ours, theirs] = await cpuOfPair(
    9,
    () => {
      for (let i = 0; i < many; i += 1) for (const strand of strands) planStrand(strand);
    },
    () => {
      for (let i = 0; i < many; i += 1) for (const strand of bare) bareWalk(strand);
    },
  );
  const each = many * strands.length;
  row(
    'walk of one strand, with reasons and what was refused',
    ms(ours / each),
    `numbers alone ${ms(theirs / each)}, × ${(ours / theirs).toFixed(1)}`,
  );
}

async function paper(content: Content, client: Client): Promise<void> {
  const plan = sayPlan(planOf(content, client));
  const booklet = composeBooklet({ library: content.library, client, plan });
  const drawn = await drawBooklet(booklet, client.id);
  invariant(drawn.value !== null, 'the booklet can be printed');
  const bytes = drawn.value.length;
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
    // Without script every leaf of the web booklet stands in the page, so that Chromium prints it whole.
    const page = await (await browser.newContext({ javaScriptEnabled: false })).newPage();
    const out = join(tmpdir(), `chalkleaf-bench-${process.pid}`);
    execFileSync(process.execPath, [MAIN, 'build', '--only', client.id, '--today', '2026-11-24', '--out', out], {
      cwd: TOP,
      stdio: 'ignore',
    });
    await page.goto(`file://${out}/private/clients/${client.id}/booklet.html`);
    let chromiumBytes = 0;
    const ours: number[] = [];
    const theirs: number[] = [];
    for (let i = 0; i < 10; i += 1) await drawBooklet(booklet, client.id);
    for (let i = 0; i < 5; i += 1) {
      let from = performance.now();
      await drawBooklet(booklet, client.id);
      ours.push(performance.now() - from);
      from = performance.now();
      chromiumBytes = (await page.pdf({ format: 'A5', tagged: true, outline: true })).length;
      theirs.push(performance.now() - from);
    }
    const middle = (values: number[]): number => values.sort((a, b) => a - b)[2] ?? 0;
    row(
      'tagged A5 booklet, five faces',
      ms(middle(ours)),
      `Chromium printing the web booklet ${ms(middle(theirs))}, × ${(middle(theirs) / middle(ours)).toFixed(1)}`,
    );
    row('its bytes', kb(bytes), `Chromium ${kb(chromiumBytes)}, × ${(bytes / chromiumBytes).toFixed(2)}`);
    hosted(join(out, 'private', 'clients', client.id, 'booklet'));
    execFileSync('rm', ['-rf', out]);
  } finally {
    await browser.close();
  }
}

function hosted(folder: string): void {
  for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' }).sort()) {
    const path = join(folder, name);
    if (!statSync(path).isFile()) continue;
    const bytes = readFileSync(path);
    const already = name.endsWith('.woff2');
    row(
      `hosted: ${name}`,
      kb(already ? bytes.length : gzipSync(bytes).length),
      already ? 'as it is' : `gzip; brotli ${kb(brotliCompressSync(bytes).length)}; plain ${kb(bytes.length)}`,
    );
  }
}

async function engineSize(): Promise<void> {
  const built = await build({
    entryPoints: [join(TOP, 'src/engine/plan-block.ts')],
    bundle: true,
    minify: true,
    write: false,
    format: 'esm',
    target: 'es2022',
  });
  const bytes = built.outputFiles[0]?.contents ?? new Uint8Array();
  row('engine alone, bundled', kb(gzipSync(bytes).length), `gzip; plain ${kb(bytes.length)}`);
}

const gathered = await gatherFiles(join(TOP, 'content'));
const { value: content } = readFolder(gathered.value);
const client = content.clients.find(({ id }) => id === 'rowan-ashby');
invariant(client !== undefined, 'the demo has its first client');
versions();
startUp();
await planning(content, client);
await paper(content, client);
await engineSize();
