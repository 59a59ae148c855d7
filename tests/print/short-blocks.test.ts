/** A block of fewer weeks on paper: as many columns as weeks, over the whole width, and every page in order. */
import { beforeAll, expect, test } from 'vitest';
import type { Booklet } from '../../src/model/booklet.js';
import { clientId } from '../../src/model/identity.js';
import { layOutBooklet } from '../../src/print/lay-out-booklet.js';
import { weekColumns } from '../../src/print/lay-out-session-row.js';
import { loadFaces, measureWith } from '../../src/print/load-faces.js';
import type { Measure } from '../../src/print/measure.js';
import type { TextBox } from '../../src/print/page.js';
import { A5_SHEET, LINE } from '../../src/print/sheet.js';
import { fixtureBooklet } from '../fixtures/booklet.js';
import { offTheGrid, offThePage, offTheTextBlock, overlaps } from './grid-faults.js';
import { partsOf } from './parts-of.js';

let measure: Measure;
beforeAll(async () => {
  measure = measureWith(await loadFaces());
});

/** The fixture's first weeks alone. */
function firstWeeks(most: number): Booklet {
  const kept = <Of extends { readonly week: number }>(of: readonly Of[]): readonly Of[] =>
    of.filter(({ week }) => week <= most);
  const parts = fixtureBooklet.parts.map((part) => {
    if (part.kind === 'cover') return { ...part, weeks: kept(part.weeks) };
    if (part.kind === 'calendar') return { ...part, weeks: kept(part.weeks) };
    if (part.kind !== 'session') return part;
    const rows = part.rows.map((row) => ({ ...row, cells: kept(row.cells) }));
    return { ...part, weeks: kept(part.weeks), notes: kept(part.notes), short: kept(part.short), rows };
  });
  return { ...fixtureBooklet, parts };
}

test.each([2, 3, 4, 5, 6])('%i weeks: nothing leaves the page, the block or the grid', (weeks) => {
  const { value, problems } = layOutBooklet(firstWeeks(weeks), measure, clientId('x'));
  expect(problems).toEqual([]);
  const faults = value.flatMap((page) => [
    ...offThePage(page),
    ...offTheTextBlock(page),
    ...offTheGrid(page, LINE / 2),
    ...overlaps(page),
  ]);
  expect(faults).toEqual([]);
  const [session] = partsOf(firstWeeks(weeks), 'session');
  const columns = weekColumns(session?.weeks ?? [], A5_SHEET);
  expect(columns.width * weeks).toBeCloseTo(A5_SHEET.tableWidth);
  // The days that head the columns stand one column apart, and there is one for each week.
  const days = session?.weeks.map(({ dateText }) => dateText) ?? [];
  const lines = new Map<string, TextBox[]>();
  for (const { number, boxes } of value) {
    for (const box of boxes) {
      if (box.kind !== 'text' || !days.includes(box.text)) continue;
      const line = `${number}/${Math.round(box.y)}`;
      lines.set(line, [...(lines.get(line) ?? []), box]);
    }
  }
  const [heads = []] = [...lines.values()].filter((line) => line.length === weeks);
  const lefts = heads.map(({ x }) => x);
  expect(heads.map(({ text }) => text)).toEqual(days);
  const apart = lefts.slice(1).map((left, index) => left - (lefts[index] ?? 0));
  for (const gap of apart) expect(Math.abs(gap - columns.width)).toBeLessThan(1.1);
});
