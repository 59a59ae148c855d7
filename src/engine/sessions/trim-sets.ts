/** Sets taken off a session, one at a time, until it fits the client's minutes. Whole rows are cut before that. */
import type { BlockContext } from '../block-context.js';
import type { TimedRow } from './count-seconds.js';

/** From the last row upwards and round again; a circuit loses a round of all its rows, and `every` one signal. */
export function trimSets(
  timed: readonly TimedRow[],
  context: BlockContext,
  minutesOf: (rows: readonly TimedRow[]) => number,
): readonly TimedRow[] {
  let rows = timed;
  for (;;) {
    let changed = false;
    for (let index = rows.length - 1; index >= 0; index -= 1) {
      if (minutesOf(rows) <= context.client.minutes) return rows;
      const row = rows[index];
      if (row === undefined || !mayLoseASet(row, index, rows, context)) continue;
      const together = row.fitted.inCircuit ? row.fitted.block : null;
      rows = rows.map((other, i) =>
        i === index || (together !== null && other.fitted.block === together) ? fewer(other) : other,
      );
      changed = true;
    }
    if (!changed) return rows;
  }
}

const fewer = (row: TimedRow): TimedRow => ({ ...row, sets: row.sets - 1, trial: row.trial && row.sets > 2 });

function mayLoseASet(row: TimedRow, index: number, rows: readonly TimedRow[], { programme }: BlockContext): boolean {
  const { block, inCircuit } = row.fitted;
  if (!inCircuit) return row.sets > 1 && !programme.neverCut.includes(row.fitted.row.id);
  const all = rows.filter((other) => other.fitted.block === block);
  // A round is taken off at the circuit's last row, once.
  const isLast = rows.findLastIndex((other) => other.fitted.block === block) === index;
  return isLast && all.every((other) => other.sets > 1 && !programme.neverCut.includes(other.fitted.row.id));
}
