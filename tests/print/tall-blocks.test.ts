/** Blocks that no page can hold run over pages, wherever they are asked to begin. */
import { expect, test } from 'vitest';
import { type Block, blankSlug, block, withNext } from '../../src/print/lay-out-blocks.js';
import { fillPages } from '../../src/print/lay-out-pages.js';

const LINES = 20;
const lines = (count: number): Block =>
  block(withNext(Array.from({ length: count }, () => blankSlug(1, 'table'))), { whole: true });
const NOTHING = { start: 'page', running: '', blocks: [] } as const;

test.each([
  ['first of a circuit, on a right page', [lines(22), lines(8), lines(25), { ...lines(6), joined: true as const }]],
  ['where a page is asked for', [lines(8), { ...lines(25), breakBefore: true as const }]],
  ['anywhere', [lines(8), lines(50), lines(3)]],
])('%s', (_, blocks) => {
  const pages = fillPages([{ start: 'page', running: '', blocks }], NOTHING, LINES);
  const said = blocks.reduce((sum, { slugs }) => sum + slugs.length, 0);
  expect(pages.reduce((sum, { slugs }) => sum + slugs.length, 0)).toBe(said);
  for (const { used, slugs } of pages) {
    expect(used).toBeLessThanOrEqual(LINES);
    expect(slugs.length).toBeGreaterThan(0);
  }
});
