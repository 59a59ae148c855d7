/** What keeps marks, bundled alone into a page that does nothing else: for what no screen can show. */
import { build } from 'esbuild';
import type { Keep } from '../../src/phone/keep/keep.js';

declare global {
  interface Window {
    keep: Keep;
    kept: Promise<Keep>;
  }
}

/** A page that opens what is kept of a booklet; `window.kept` resolves with it. */
export async function keepPage(edition = 1, bookletId = '0123456789abcdef0123456789abcdef'): Promise<string> {
  const plan = { schema: 1, edition, block: 1, starts: '2027-01-04', bookletId, weeks: [] };
  const built = await build({
    stdin: {
      contents: `import { openKeep } from './keep.js'; window.kept = openKeep(${JSON.stringify(plan)}, 'A booklet'); window.kept.then((keep) => { window.keep = keep; });`,
      resolveDir: new URL('../../src/phone/keep', import.meta.url).pathname,
      loader: 'ts',
    },
    bundle: true,
    write: false,
    format: 'iife',
    target: ['chrome90', 'safari14', 'firefox90'],
    supported: { destructuring: true },
  });
  const script = (built.outputFiles[0]?.text ?? '').replaceAll('</script', '<\\/script');
  return `<!doctype html><html lang="en"><meta charset="utf-8"><title>Keep</title><script>${script}</script></html>`;
}
