/** One small booklet, every word with its place, in a text a book designer could check with a ruler. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { Booklet, Part } from '../../src/model/booklet.js';
import { clientId } from '../../src/model/identity.js';
import { layOutBooklet } from '../../src/print/lay-out-booklet.js';
import { loadFaces, measureWith } from '../../src/print/load-faces.js';
import type { Page } from '../../src/print/page.js';
import { fixtureBooklet } from '../fixtures/booklet.js';

const GOLDEN = join(import.meta.dirname, 'booklet.golden.txt');
const MOST_LINES = 200;

/** The cover, the first exercise of the first session, and its page. */
function smallBooklet(): Booklet {
  const parts = fixtureBooklet.parts.flatMap((part): readonly Part[] => {
    if (part.kind === 'cover') return [part];
    if (part.kind === 'session' && part.id === 'a') return [{ ...part, rows: part.rows.slice(0, 1) }];
    return part.kind === 'exercise' && part.id === 'goblet-squat' ? [part] : [];
  });
  return { ...fixtureBooklet, parts };
}

const point = (value: number): string => value.toFixed(1).padStart(5);

function pageText(page: Page): readonly string[] {
  const words = page.boxes.flatMap((box) =>
    box.kind === 'text'
      ? [
          `${point(box.x)} ${point(box.y)}  ${box.style.padEnd(12)} ${box.tag?.role ?? '-'}  ${box.text.replaceAll('\u00a0', ' ')}`,
        ]
      : [],
  );
  const others = page.boxes.filter((box) => box.kind === 'line').length;
  const frames = page.boxes.filter((box) => box.kind === 'frame').length;
  return [
    `page ${page.number}, ${page.side}: ${others} rules and strokes, ${frames} frames`,
    ...words.map((line) => line.trimEnd()),
    '',
  ];
}

test('a small booklet is laid out as it was', async () => {
  const { value } = layOutBooklet(smallBooklet(), measureWith(await loadFaces()), clientId('rowan-ashby'));
  const text = `${value.flatMap(pageText).join('\n').trim()}\n`;
  expect(text.split('\n').length).toBeLessThan(MOST_LINES);
  if (process.env.UPDATE) writeFileSync(GOLDEN, text);
  expect(text).toBe(readFileSync(GOLDEN, 'utf8'));
});
