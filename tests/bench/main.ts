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
import { type LinkedLibrary, linkLibrary, planBlock } from '../../src/engine/plan-block.js';
import { planStrand, planSurely } from '../../src/engine/plan-strand.js';
import { drawLibrary } from '../../src/figures/draw-library.js';
import type { Client } from '../../src/model/client.js';
import { dayOfIso } from '../../src/model/day.js';
import { kitItemId, rowId } from '../../src/model/identity.js';
import type { Plan } from '../../src/model/plan.js';
import type { Programme } from '../../src/model/programme.js';
import { invariant, type Result } from '../../src/model/result.js';
import type { StrandInput } from '../../src/model/strand.js';
import type { Content } from '../../src/model/studio.js';
import { drawBooklet } from '../../src/print/draw-booklet.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { sayPlan } from '../../src/words/say-plan.js';
import { type BareStrand, bareWalk } from './bare-walk.js';
import { measureDrawings } from './drawings.js';
import { firstPaints } from './first-paint.js';
import { measureLibrary } from './library-search.js';
import { cpuOf, cpuOfChildren, cpuOfPair, processFigures } from './measure.js';
import { drawMany, measurePapers, peakOfMany } from './papers.js';

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

function planned(content: Content, client: Client, linked?: LinkedLibrary): Result<Plan | null> {
  invariant(TODAY !== undefined, 'the day exists');
  const input = { library: content.library, client, today: TODAY, edition: 0 };
  return planBlock(linked === undefined ? input : { ...input, linked });
}

function planOf(content: Content, client: Client): Plan {
  const { value } = planned(content, client);
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
  const more = Math.max(1, Math.round(21 / longer(content, client, 1, 6).rows));
  const measure = async (
    rows: number,
    weeks: number,
    loads: number,
    times = 30,
  ): Promise<readonly [number, number]> => {
    const made = longer(content, client, rows, weeks);
    const lifter = loads === 0 ? made.client : withBells(made.client, loads);
    // As a build does it: the library read once for all clients.
    const linked = linkLibrary(made.content.library.exercises);
    return [await cpuOf(times, () => planned(made.content, lifter, linked)), made.rows];
  };
  const [taken, rows] = await measure(more, 6, 0, 200);
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
    [6, 12, 24].map((weeks) => [`${weeks}`, more, weeks, 0] as const),
  );
  await growth(
    'rows',
    [1, 2, 4].map((fold) => [`${rows * fold}`, more * fold, 6, 0] as const),
  );
  await growth(
    'loads',
    [8, 16, 32].map((loads) => [`${loads}`, more, 6, loads] as const),
  );
  await walking(content);
}

/** Every strand of the demo that begins from a test, in one version, with nothing held: the bare walk knows no more. */
async function walking(content: Content): Promise<void> {
  const tested = content.clients.flatMap((client) => {
    const { value } = planned(content, client);
    return (value?.inputs.strands ?? []).filter(({ capacity }) => capacity !== null);
  });
  const pairs = tested.flatMap((strand) => {
    const bare = bareOf(strand);
    return bare === null ? [] : [[strand, bare] as const];
  });
  for (const [strand, bare] of pairs) {
    const { steps, otherwise } = bareWalk(bare);
    const sure = planSurely(strand)?.map(({ option, reps }) => [option.load, option.tempo, reps].join());
    const theirs = [...steps.slice(0, steps.length - otherwise.length), ...otherwise].map((step) =>
      step.slice(0, 3).join(),
    );
    invariant(sure?.join(' ') === theirs.join(' '), `the bare walk of ${strand.id} is the walk's own`);
  }
  const many = 2000;
  let reps = 0;
  const timed = (walk: (pair: (typeof pairs)[number]) => number) => () => {
    for (let i = 0; i < many; i += 1) for (const pair of pairs) reps += walk(pair);
  };
  const bare = timed(([, strand]) => bareWalk(strand).steps.at(-1)?.[2] ?? 0);
  const sure = timed(([strand]) => planSurely(strand)?.at(-1)?.reps ?? 0);
  const told = timed(([strand]) => {
    const result = planStrand(strand);
    return result.kind === 'walked' ? (result.steps.at(-1)?.reps ?? 0) : 0;
  });
  const each = many * pairs.length;
  for (const [what, walk] of [
    ['walk of one strand, the numbers', sure],
    ['  with reasons, what was refused, and findings', told],
  ] as const) {
    const [ours, theirs] = await cpuOfPair(9, walk, bare);
    row(what, ms(ours / each), `bare ${ms(theirs / each)}, × ${(ours / theirs).toFixed(1)}; ${pairs.length} strands`);
  }
  invariant(reps > 0, 'the walks were walked');
}

/** `null` where the walk has more to go by than the bare one knows. */
function bareOf(strand: StrandInput): BareStrand | null {
  const [version, another] = strand.versions;
  const { capacity, start, occurrences } = strand;
  if (version === undefined || another !== undefined || capacity === null || start === null) return null;
  if (version.loads.some(({ mode }) => mode === 'per-hand')) return null;
  if (
    occurrences.some(({ held }) => held !== undefined) ||
    strand.gates === false ||
    strand.weeks.length !== occurrences.length ||
    occurrences.some(({ floor }) => floor !== occurrences[0]?.floor)
  )
    return null;
  return {
    share: version.share,
    bodyMass: strand.bodyMass,
    loads: version.loads.map(({ grams }) => grams),
    test: {
      load: start.load,
      resisted: capacity.resisted,
      reps: capacity.reps,
      weak: capacity.weak || capacity.reps > strand.rules.weakAbove,
    },
    bottom: strand.bottom,
    top: strand.top,
    floor: occurrences[0]?.floor ?? 0,
    gain: strand.gain,
    trials: strand.trials,
    weeks: occurrences.map(({ asked, sets, easy }) => [asked, sets, easy]),
    tempi: strand.tempi.map(({ factor }) => factor),
  };
}

async function paper(content: Content, client: Client): Promise<void> {
  const plan = sayPlan(planOf(content, client));
  const booklet = composeBooklet({ library: content.library, client, plan });
  const shown = { drawings: drawLibrary(content.library.exercises) };
  const drawn = await drawBooklet(booklet, client.id, undefined, shown);
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
    const ours = await cpuOf(5, () => drawBooklet(booklet, client.id, undefined, shown));
    const print = () => page.pdf({ format: 'A5', tagged: true, outline: true });
    const chromiumBytes = (await print()).length;
    const theirs = await cpuOfChildren(5, print);
    row(
      'tagged A5 booklet with its drawings, five faces, CPU',
      ms(ours),
      `Chromium printing the web booklet ${ms(theirs)}, × ${(theirs / ours).toFixed(1)}`,
    );
    row('its bytes', kb(bytes), `Chromium ${kb(chromiumBytes)}, × ${(bytes / chromiumBytes).toFixed(2)}`);
    const forms = await measurePapers(booklet, shown);
    const [first] = forms.files;
    const pages = forms.files.reduce((sum, [, size]) => sum + size, 0);
    row('all forms on paper, CPU', ms(forms.cpuMs), `${forms.files.length} files, ${kb(pages)}`);
    for (const [name, size] of forms.files) {
      const single = first === undefined ? '' : `; × ${(size / first[1]).toFixed(2)} of the single pages`;
      row(`  ${name}`, kb(size), `Chromium’s one form × ${(size / chromiumBytes).toFixed(2)}${single}`);
    }
    const [few, many] = [10, 60].map((times) => peakOfMany(import.meta.filename, times, TOP));
    row('peak of 60 booklets in all forms', `${many?.toFixed(0)} MiB`, `of 10 ${few?.toFixed(0)} MiB; at most 260 MiB`);
    const folder = join(out, 'private', 'clients', client.id, 'booklet');
    hosted(folder);
    const searched = await measureLibrary(browser, content.library);
    for (const [file, size] of searched.sizes) {
      row(
        `library of ${searched.exercises}: ${file}`,
        kb(size),
        `gzip${file === 'search-index.js' ? '; at most 150 KB' : ''}`,
      );
    }
    for (const [typed, taken] of searched.found) {
      row(`  first result after ‘${typed}’, 4 × CPU`, ms(taken), 'at most 50 ms');
    }
    const paints = await firstPaints(browser, folder);
    row(
      'first paint, slow phone',
      ms(paints.booklet.paint),
      `an empty page ${ms(paints.empty.paint)}, × ${(paints.booklet.paint / paints.empty.paint).toFixed(2)}`,
    );
    row('  until the cover can be read', ms(paints.booklet.read));
    row('held up until all is quiet', ms(paints.booklet.blocking), `an empty page ${ms(paints.empty.blocking)}`);
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

async function drawings(content: Content, client: Client): Promise<void> {
  const whole = planOf(content, client);
  const booklet = composeBooklet({ library: content.library, client, plan: sayPlan(whole) });
  const figures = await measureDrawings(content.library.exercises, booklet, clientPlanOf(whole));
  const { cpuMs, drawn, alone, inBooklet } = figures;
  row('drawing an exercise from its table, CPU', ms(cpuMs), `mean of ${drawn}`);
  row('  alone with what moves it, gzip', kb(alone.mean), `largest ${kb(alone.most)}, at most 6 KB`);
  row('  one more in a booklet, gzip', kb(inBooklet.bytes / inBooklet.drawn), 'at most 1.5 KB on average');
  row('  all in a booklet, gzip', kb(inBooklet.bytes), `${inBooklet.drawn} drawings; at most 25 KB`);
}

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
const [only, times] = process.argv.slice(2);
if (only === 'papers') {
  // Once more, as a process of its own: what it holds at most is told by its end.
  const plan = sayPlan(planOf(content, client));
  const shown = { drawings: drawLibrary(content.library.exercises) };
  await drawMany(composeBooklet({ library: content.library, client, plan }), shown, Number(times));
} else {
  versions();
  startUp();
  await planning(content, client);
  await paper(content, client);
  await drawings(content, client);
  await engineSize();
}
