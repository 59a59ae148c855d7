/** The feet under an exercise's columns, a row for each side, with room above them for strokes of 7 mm. */
import type { Cell } from '../model/booklet.js';
import type { Slug } from './lay-out-blocks.js';
import { layOutLines } from './lay-out-lines.js';
import { layOutFeet, tallyWidth } from './lay-out-tally.js';
import type { Measure } from './measure.js';
import { type Box, moved } from './page.js';
import { BASELINE, LINE, TALLY_UNIT } from './sheet.js';

/** A stroke, and a hair of white above it. */
const STROKE_ROW = 1.5 * LINE;
const LABEL_GAP = 4;
/** Feet stand a little above the end of their slug, so that a rule below them is not taken for a part of them. */
const ABOVE_END = (STROKE_ROW - TALLY_UNIT) / 2 + 2;
const FIVE = 5;

type TallyRow = Cell['tally'][number];

export interface TallyColumn {
  readonly x: number;
  readonly tally: readonly TallyRow[];
}

/** Strokes that do not fit the column stand in further rows, in fives. */
function inFives(strokes: number, room: number): readonly number[] {
  if (strokes <= FIVE || tallyWidth(strokes) <= room) return [strokes];
  return Array.from({ length: Math.ceil(strokes / FIVE) }, (_, i) => Math.min(FIVE, strokes - i * FIVE));
}

/** The side's name stands before its feet; above them where the column is too narrow for both. */
export function layOutTallyRows(columns: readonly TallyColumn[], width: number, measure: Measure): Slug {
  const all = columns.flatMap((column) => column.tally);
  const labelWidth = Math.max(0, ...all.map(({ label }) => (label === '' ? 0 : measure.width('label', label))));
  const indent = labelWidth === 0 ? 0 : labelWidth + LABEL_GAP;
  const widest = Math.max(0, ...all.map(({ strokes }) => tallyWidth(strokes)));
  const above = indent > 0 && indent + widest > width;
  const room = width - (above ? 0 : indent);
  const rowsOfSide = Math.max(1, ...all.map(({ strokes }) => inFives(strokes, room).length));
  const sides = Math.max(1, ...columns.map((column) => column.tally.length));
  const wrapped = (label: string) => layOutLines([{ style: 'label', text: label }], above ? width : indent, measure);
  const labelLines = above ? Math.max(1, ...all.map(({ label }) => wrapped(label).length)) : 0;
  const sideHeight = rowsOfSide * STROKE_ROW + labelLines * LINE;
  const lines = sides * sideHeight <= STROKE_ROW ? 2 : Math.ceil((sides * sideHeight) / LINE);
  const top = lines * LINE - sides * sideHeight;

  const boxes = columns.flatMap(({ x, tally }) =>
    tally.flatMap(({ label, strokes }, side): readonly Box[] => {
      const start = top + side * sideHeight + labelLines * LINE;
      const bottom = (row: number): number => start + (row + 1) * STROKE_ROW - ABOVE_END;
      const first = above ? start - labelLines * LINE : bottom(0) - BASELINE;
      const named = wrapped(label).flatMap((line, n) => line.boxes.map((box) => moved(box, x, first + n * LINE)));
      const feet = inFives(strokes, room).flatMap((count, row) =>
        layOutFeet(count, x + (above ? 0 : indent), bottom(row)),
      );
      return [...named, ...feet];
    }),
  );
  return { lines, area: 'table', boxes, withNext: true };
}
