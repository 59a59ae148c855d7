/** A booklet as a phone gets it: the bytes of its files, and how soon it can be read. */
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync, gzipSync } from 'node:zlib';
import type { Browser } from 'playwright-core';
import { firstPaints } from './first-paint.js';
import { kb, ms, row } from './table.js';

export function hosted(folder: string): void {
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

export async function painted(browser: Browser, folder: string): Promise<void> {
  const paints = await firstPaints(browser, folder);
  row(
    'first paint, slow phone',
    ms(paints.booklet.paint),
    `an empty page ${ms(paints.empty.paint)}, × ${(paints.booklet.paint / paints.empty.paint).toFixed(2)}`,
  );
  row('  until the cover can be read', ms(paints.booklet.read));
  row('held up until all is quiet', ms(paints.booklet.blocking), `an empty page ${ms(paints.empty.blocking)}`);
}
