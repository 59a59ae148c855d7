/** Short items one after the other, as many on a line as stand on it whole: where room is short, and no item may be lost. */
import { rule, type Slug, together } from './lay-out-blocks.js';
import { layOutLines, readOn, type StyledRun } from './lay-out-lines.js';
import type { Measure } from './measure.js';
import { type Box, moved } from './page.js';
import { BASELINE } from './sheet.js';

export interface PackedItem {
  readonly runs: readonly StyledRun[];
  /** A line to write on behind it, so long; absent where nothing is to be written. */
  readonly toWrite?: number;
}

/** Between two items on a line: wide enough that one is not read on into the next. */
const GAP = 14;
const BEFORE_LINE = 4;

/** In the table's width, in their order; one that is longer than a line begins one and ends one. */
export function packed(items: readonly PackedItem[], measure: Measure): readonly Slug[] {
  const { tableWidth } = measure.sheet;
  const lines: { boxes: Box[]; used: number }[] = [];
  let open = false;
  for (const { runs, toWrite = 0 } of items) {
    const laid = readOn(layOutLines(runs, tableWidth - toWrite, measure));
    const last = lines.at(-1);
    const [first] = laid;
    if (first === undefined) continue;
    const at = open && last && laid.length === 1 ? last.used + GAP : 0;
    const joins = last !== undefined && at > 0 && at + first.width + toWrite <= tableWidth;
    for (const [i, line] of laid.entries()) {
      const x = joins ? at : 0;
      const written = toWrite > 0 && i === laid.length - 1;
      const end = x + line.width;
      const boxes = [
        ...line.boxes.map((box) => moved(box, x, 0)),
        ...(written ? [rule(end + BEFORE_LINE, BASELINE + 2, toWrite - BEFORE_LINE)] : []),
      ];
      const used = end + (written ? toWrite : 0);
      if (joins) {
        last.boxes.push(...boxes);
        last.used = used;
      } else lines.push({ boxes, used });
    }
    open = laid.length === 1;
  }
  return together(lines.map(({ boxes }): Slug => ({ lines: 1, area: 'table', boxes, withNext: false })));
}
