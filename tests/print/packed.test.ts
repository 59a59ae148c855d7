/** Items run on one after the other: each whole, in order, none over another, none over the edge. */
import { expect, test } from 'vitest';
import { linesOf } from '../../src/print/lay-out-blocks.js';
import { type PackedItem, packed } from '../../src/print/lay-out-packed.js';
import { loadFaces, measureWith } from '../../src/print/load-faces.js';

const measure = measureWith(await loadFaces());
const { tableWidth } = measure.sheet;
const item = (text: string, toWrite?: number): PackedItem => ({
  runs: [{ style: 'label', text }],
  ...(toWrite === undefined ? {} : { toWrite }),
});
const LONG =
  'Standing with your back to a wall, elbows pressing into it, for as long as you like and then a little longer';

/** What stands on each line, from left to right. */
const linesIn = (items: readonly PackedItem[]) =>
  packed(items, measure).map(({ boxes }) =>
    boxes.map((box) =>
      box.kind === 'text'
        ? { text: box.text, from: box.x, to: box.x + box.width }
        : { text: '_', from: box.x, to: box.kind === 'line' ? box.toX : Number.NaN },
    ),
  );

test('as many on a line as it holds, in their order', () => {
  const items = Array.from({ length: 12 }, (_, i) => item(`${i} left: 8 kg × ${i + 1}`));
  const lines = linesIn(items);
  expect(lines.length).toBeLessThan(items.length / 2);
  expect(lines.flat().map(({ text }) => text.replaceAll('\u00a0', ' '))).toEqual(
    items.map(({ runs }) => runs[0]?.text),
  );
  for (const line of lines) {
    line.forEach(({ from, to }, i) => {
      expect(from - (line[i - 1]?.to ?? -14)).toBeGreaterThanOrEqual(14 - 1e-6);
      expect(to).toBeLessThanOrEqual(tableWidth + 1e-6);
    });
  }
});

test('one longer than a line has lines of its own', () => {
  const lines = linesIn([item('none left'), item(LONG), item('2 left')]).map((line) => line.map(({ text }) => text));
  expect(lines[0]).toEqual(['none left']);
  expect(lines.at(-1)).toEqual(['2 left']);
  expect(lines.slice(1, -1).flat().join(' ')).toBe(LONG);
  expect(lines.length).toBeGreaterThan(3);
});

test('what is to be written keeps its room', () => {
  const [line = []] = linesIn([item('How many more, week 1:', 60), item('none left')]);
  const [asked, written, next] = line;
  expect(written?.text).toBe('_');
  expect(written?.from).toBeGreaterThan(asked?.to ?? Infinity);
  expect((written?.to ?? 0) - (asked?.to ?? 0)).toBeCloseTo(60, 6);
  expect(next?.from).toBeGreaterThan(written?.to ?? Infinity);
});

test('all of it stays on one page', () => {
  const slugs = packed([item(LONG), item(LONG), item('2 left')], measure);
  expect(linesOf(slugs)).toBe(slugs.length);
  expect(slugs.map(({ withNext }) => withNext)).toEqual(slugs.map((_, i) => i < slugs.length - 1));
});
