/** The engine alone, as a phone would get it. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { build, type Plugin } from 'esbuild';
import { TOP } from './demo.js';
import { kb, row } from './table.js';

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

export async function engineSize(): Promise<void> {
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
