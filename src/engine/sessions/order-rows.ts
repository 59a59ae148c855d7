/**
 * In which order the rows of a session are done: fast work first and floor work together in straight blocks, else as
 * the coach wrote them. The order inside a circuit stands with the circuits.
 */
import type { Exercise } from '../../model/exercise.js';
import type { FittedRow } from '../rows/fit-rows.js';
import type { Rulebook } from '../rulebook.js';
import { FAST_FIRST } from '../rules/fast-first.js';
import { FLOOR_LAST } from '../rules/floor-last.js';

export const asksFloor = ({ facts }: Exercise): boolean =>
  facts.asks.some((ask) => ask.of === 'floor' || ask.of === 'lying on the back');

/** Some version that the row may reach is done down on the floor. */
export const needsFloor = ({ chain }: FittedRow): boolean => chain.judged.some(({ exercise }) => asksFloor(exercise));

export const isFast = ({ chain }: FittedRow): boolean =>
  chain.judged.some(({ exercise: { facts } }) => {
    return facts.way === 'swing' || facts.asks.some((ask) => ask.of === 'speed' && ask.degree === 'much');
  });

/** Rows that are done together: one block of a session, in order. */
type BlockRows = readonly FittedRow[];

/**
 * Each block's rows in the order they are done, with the fewest trips down to the floor over the whole session. Fast
 * rows come first in their block; of the others those on the floor come last, or first where that alone saves a trip,
 * the body being down already. Everything else stays as written.
 */
export function orderBlocks(blocks: readonly BlockRows[], rules: Rulebook): readonly BlockRows[] {
  const orders = blocks.map((rows) => ordersOf(rows, rules));
  let ahead: Ahead = { standing: { downs: 0, rows: [] }, down: { downs: 0, rows: [] } };
  for (const open of [...orders].reverse()) {
    ahead = { standing: fewest(open, false, ahead), down: fewest(open, true, ahead) };
  }
  return ahead.standing.rows;
}

interface Path {
  /** Trips down from here to the end. */
  readonly downs: number;
  readonly rows: readonly BlockRows[];
}
interface Ahead {
  readonly standing: Path;
  readonly down: Path;
}

/** The one preferred first: of equally few trips it stays. */
function ordersOf(rows: BlockRows, rules: Rulebook): readonly BlockRows[] {
  if (rows[0]?.inCircuit === true) return [rows];
  const fast = rows.filter((row) => rules.valueOf(FAST_FIRST) > 0 && isFast(row));
  const others = rows.filter((row) => !fast.includes(row));
  if (rules.valueOf(FLOOR_LAST) === 0) return [[...fast, ...others]];
  const floor = others.filter(needsFloor);
  const standing = others.filter((row) => !floor.includes(row));
  return [
    [...fast, ...standing, ...floor],
    [...fast, ...floor, ...standing],
  ];
}

function fewest(orders: readonly BlockRows[], down: boolean, ahead: Ahead): Path {
  const [first = { downs: 0, rows: [] }, ...others] = orders.map((rows): Path => {
    const ends = rows.length === 0 ? down : rows.slice(-1).some(needsFloor);
    const rest = ends ? ahead.down : ahead.standing;
    return { downs: tripsDown(rows.map(needsFloor), down) + rest.downs, rows: [rows, ...rest.rows] };
  });
  return others.reduce((best, path) => (path.downs < best.downs ? path : best), first);
}

/** How often one goes down for these, one after the other; `down`: on the floor already. */
export function tripsDown(onTheFloor: readonly boolean[], down = false): number {
  return onTheFloor.filter((floor, index) => floor && !(index === 0 ? down : onTheFloor[index - 1])).length;
}
