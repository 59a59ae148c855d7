/**
 * `npm run bench`: times and sizes, as ratios against bare reference code or outside programs in the same run.
 * Prints a table; judges nothing. The demo studio is the corpus.
 */
import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { brotliCompressSync, gzipSync } from 'node:zlib';
import { build, type Plugin } from 'esbuild';
import { chromium } from 'playwright-core';
import { gatherFiles } from '../../src/app/gather-files.js';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import { readFolder } from '../../src/content/read-folder.js';
import { planBlock } from '../../src/engine/plan-block.js';
import { planStrand } from '../../src/engine/plan-strand.js';
import type { Client } from '../../src/model/client.js';
import { dayOfIso } from '../../src/model/day.js';
import { kitItemId, rowId } from '../../src/model/identity.js';
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

/** So many bells in place of the client's own, evenly apart from 4 kg to 40 kg. */
function withBells(client: Client, bells: number): Client {
  const kit = Array.from({ length: bells }, (_, i) => {
    const grams = 4000 + Math.floor((36_000 * i) / Math.max(1, bells - 1));
    const mass = { grams, figure: `${grams / 1000}`, unit: 'kg' } as const;
    return { id: kitItemId(`bell-${i}`), kind: 'bell', mass } as const;
  });
  return { ...client, kit };
}

/** One figure for six weeks of some 21 rows; then each of weeks, rows and loads twice, and four times as many. */
async function planning(content: Content, client: Client): Promise<void> {
  const times = Math.max(1, Math.round(21 / longer(content, client, 1, 6).rows));
  const measure = async (rows: number, weeks: number, loads: number): Promise<readonly [number, number]> => {
    const made = longer(content, client, rows, weeks);
    const lifter = loads === 0 ? made.client : withBells(made.client, loads);
    return [await cpuOf(15, () => planOf(made.content, lifter)), made.rows];
  };
  const [taken, rows] = await measure(times, 6, 0);
  row(
    `planning one client, 6 weeks × ${rows} rows`,
    ms(taken),
    'at most 5 ms; screening, versions, sessions, reasons, audit',
  );
  const growth = async (what: string, sizes: readonly (readonly [string, number, number, number])[]): Promise<void> => {
    const figures: string[] = [];
    let first = 0;
    for (const [label, r, w, l] of sizes) {
      const [each] = await measure(r, w, l);
      first = first === 0 ? each : first;
      figures.push(`${label} ${ms(each)} (× ${(each / first).toFixed(1)})`);
    }
    row(`  growth over ${what}`, '', figures.join(', '));
  };
  await growth(
    'weeks',
    [6, 12, 24].map((weeks) => [`${weeks}`, times, weeks, 0] as const),
  );
  await growth(
    'rows',
    [1, 2, 4].map((more) => [`${rows * more}`, times * more, 6, 0] as const),
  );
  await growth(
    'loads',
    [8, 16, 32].map((loads) => [`${loads}`, times, 6, loads] as const),
  );
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

/** Bundled and made small, as a phone would get it; `bare` leaves out what the rules say of where they come from. */
async function bundled(
  exports: string,
  bare = false,
): Promise<{ readonly gzip: number; readonly by: Map<string, number> }> {
  const built = await build({
    stdin: { contents: exports, resolveDir: join(TOP, 'src/engine'), loader: 'ts' },
    bundle: true,
    minify: true,
    write: false,
    metafile: true,
    format: 'esm',
    target: 'es2022',
    absWorkingDir: TOP,
    plugins: bare ? [withoutTexts] : [],
  });
  const by = new Map<string, number>();
  for (const { inputs } of Object.values(built.metafile.outputs)) {
    for (const [path, { bytesInOutput }] of Object.entries(inputs)) {
      const part = path
        .replace(/^src\//, '')
        .split('/')
        .slice(0, 2)
        .join('/')
        .replace(/\.ts$/, '');
      by.set(part, (by.get(part) ?? 0) + bytesInOutput);
    }
  }
  return { gzip: gzipSync(built.outputFiles[0]?.contents ?? new Uint8Array()).length, by };
}

const withoutTexts: Plugin = {
  name: 'without-texts',
  setup: ({ onLoad }) => {
    onLoad({ filter: /engine\/rules\/[a-z-]+\.ts$/ }, ({ path }) => {
      const text = readFileSync(path, 'utf8').replaceAll(/(source|locator|date):\s*(['"])(?:(?!\2).)*\2/g, "$1: ''");
      return { contents: text, loader: 'ts' };
    });
  },
};

async function engineSize(): Promise<void> {
  const whole = await bundled("export * from './plan-block.js';");
  const heaviest = [...whole.by].sort(([, a], [, b]) => b - a).slice(0, 9);
  row('engine alone, bundled, gzip', kb(whole.gzip), 'at most 25 KB');
  row('  its weight, plain', '', heaviest.map(([part, bytes]) => `${part} ${kb(bytes)}`).join(', '));
  const bare = await bundled("export * from './plan-block.js';", true);
  row('  without what the rules say of their sources', kb(bare.gzip));
  const replan = "export * from './plan-strand.js'; export * from './ladder/plan-ladder.js';";
  row('  walk and ladder alone, as replanning needs', kb((await bundled(replan)).gzip));
  row('  and without the sources', kb((await bundled(replan, true)).gzip));
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
