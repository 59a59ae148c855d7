/** The order of a circuit: no two rows side by side that ask much of the grip, and no two hinges, round after round. */
import type { FittedRow } from '../rows/fit-rows.js';
import type { Rulebook } from '../rulebook.js';
import { CIRCUIT_APART } from '../rules/circuit-apart.js';

const gripsHard = ({ chain }: FittedRow): boolean =>
  chain.judged.some(({ exercise }) => exercise.facts.asks.some((ask) => ask.of === 'grip' && ask.degree === 'much'));

const hinges = ({ chain }: FittedRow): boolean => chain.judged[chain.base]?.exercise.facts.pattern === 'hinge';

/** A circuit longer than this is left as written or not done as one: there are too many orders to try. */
const MOST_ROWS = 8;

/**
 * The order nearest to the one written that keeps them apart, by the first row that differs; `null` where there is
 * none. The last row of a round stands beside the first of the next.
 */
export function orderCircuit(rows: readonly FittedRow[], rules: Rulebook): readonly FittedRow[] | null {
  const kinds = [rows.filter(gripsHard), rows.filter(hinges)].filter((kind) => kind.length > 1);
  const apart = rules.valueOf(CIRCUIT_APART);
  if (kinds.length === 0 || apart === 0) return rows;
  if (kinds.some((kind) => kind.length * (1 + apart) > rows.length)) return null;
  const clash = (a: FittedRow, b: FittedRow): boolean => kinds.some((kind) => kind.includes(a) && kind.includes(b));
  if (rows.length > MOST_ROWS) return isApart(rows, apart, clash) ? rows : null;
  return place([], rows, apart, clash);
}

type Clash = (a: FittedRow, b: FittedRow) => boolean;

function place(
  placed: readonly FittedRow[],
  left: readonly FittedRow[],
  apart: number,
  clash: Clash,
): readonly FittedRow[] | null {
  if (left.length === 0) return isApart(placed, apart, clash) ? placed : null;
  for (const row of left) {
    if (placed.slice(-apart).some((before) => clash(before, row))) continue;
    const rest = left.filter((other) => other !== row);
    const found = place([...placed, row], rest, apart, clash);
    if (found !== null) return found;
  }
  return null;
}

/** So many rows between any two that clash, round and round. */
const isApart = (rows: readonly FittedRow[], apart: number, clash: Clash): boolean =>
  rows.every((row, index) =>
    Array.from({ length: Math.min(apart, rows.length - 1) }, (_, step) => rows[(index + step + 1) % rows.length]).every(
      (next) => next === undefined || !clash(row, next),
    ),
  );
