/** Layout is apart from drawing: what lays out a page opens no file and knows no PDF. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';

const PRINT = resolve(import.meta.dirname, '..', '..', 'src', 'print');
/** Fontkit opens the files of faces. */
const DOORS = ['pdfkit', '@cantoo/pdf-lib', 'pdf-lib', 'fontkit'];

const modulesIn = (text: string): readonly string[] =>
  [...text.matchAll(/(?:from|import\()\s*'([^']+)'/g)].map(([, name = '']) => name);

const isOutside = (name: string): boolean =>
  DOORS.some((one) => name === one || name.startsWith(`${one}/`)) || name.startsWith('node:') || name === 'fs';

const isLayout = (name: string): boolean => name.startsWith('lay-out-') && name.endsWith('.ts');

/** What a file brings in by others of its room, as values: a type is gone once it is compiled. */
function reached(from: string, seen = new Set<string>()): ReadonlySet<string> {
  if (seen.has(from)) return seen;
  seen.add(from);
  const text = readFileSync(join(PRINT, from), 'utf8').replaceAll(/^import type [^;]+;/gm, '');
  for (const name of modulesIn(text)) {
    if (name.startsWith('./')) reached(name.slice(2).replace(/\.js$/, '.ts'), seen);
    else seen.add(name);
  }
  return seen;
}

test('no layout of a page imports a PDF library or opens a file, itself or by another', () => {
  const files = readdirSync(PRINT).filter(isLayout);
  expect(files.length).toBeGreaterThan(20);
  for (const file of files) expect([...reached(file)].filter(isOutside), file).toEqual([]);
});

test('what draws would be found', () => {
  expect([...reached('draw-pages.ts')].filter(isOutside)).toContain('pdfkit');
  expect([...reached('load-faces.ts')].filter(isOutside)).toEqual(['fontkit']);
});
