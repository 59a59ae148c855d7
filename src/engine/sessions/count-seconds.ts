/** The clock: how long the rows of a session take, one after the other, at their longest. */
import type { Seconds } from '../../model/quantity.js';
import type { FittedRow } from '../rows/fit-rows.js';
import type { Rulebook } from '../rulebook.js';
import { BETWEEN_EXERCISES } from '../rules/between-exercises.js';
import { CHANGE_OF_BELL } from '../rules/change-of-bell.js';
import { DOWN_OR_UP } from '../rules/down-or-up.js';
import { MINUTES_CAP } from '../rules/minutes-cap.js';
import { tripsDown } from './order-rows.js';
import type { RowTimes } from './seconds-of-set.js';

/** A row in one session of the queue. */
export interface TimedRow {
  readonly fitted: FittedRow;
  readonly times: RowTimes;
  /** Sets of work; 0 where the row was cut. Of a dose `every` the signals. */
  readonly sets: number;
  readonly feeler: boolean;
  /** A lighter set goes before it. */
  readonly warmUp: boolean;
  /** A trial set may take the place of its first set. */
  readonly trial: boolean;
  /** How long its test takes, with the rest after it; 0 in a session without one. */
  readonly test: Seconds;
}

/** Whole minutes of `seconds`, rounded up. */
export const minutesOf = (seconds: Seconds, rules: Rulebook): number => Math.ceil(seconds / rules.valueOf(MINUTES_CAP));

/** In the order of `rows`: work, rests, ways between, changes of bell where one may be needed, trips to the floor. */
export function secondsOfRows(rows: readonly TimedRow[], rules: Rulebook): Seconds {
  const done = rows.filter(({ sets }) => sets > 0);
  const floors: boolean[] = [];
  let seconds = 0;
  let held: TimedRow | null = null;
  for (const row of done) seconds += secondsOfRow(row, rules);
  visitEach(done, (row, round) => {
    floors.push(row.times.floor);
    if (row.times.change === 0) return;
    seconds += changeTo(row, round, held, rules);
    held = row;
  });
  return seconds + 2 * tripsDown(floors) * rules.valueOf(DOWN_OR_UP);
}

/** Sets and rests, what comes before them, and the way to the next exercise. */
function secondsOfRow({ fitted, times, sets, feeler, warmUp, trial, test }: TimedRow, rules: Rulebook): Seconds {
  const { top, bottom, change, rest } = times;
  const extra = (feeler ? bottom + rest + change : 0) + (warmUp ? bottom + change : 0) + (trial ? 2 * change : 0);
  const rests = fitted.inCircuit ? sets : sets - 1;
  return sets * top + rests * rest + extra + test + rules.valueOf(BETWEEN_EXERCISES);
}

/** Each row at work: all its sets one after the other, round 0, or one of them in each round of a circuit. */
function visitEach(rows: readonly TimedRow[], visit: (row: TimedRow, round: number) => void): void {
  for (let at = 0; at < rows.length; ) {
    const row = rows[at];
    if (row === undefined) break;
    const { block, inCircuit } = row.fitted;
    if (!inCircuit) {
      visit(row, 0);
      at += 1;
      continue;
    }
    const end = rows.findIndex((other, index) => index > at && other.fitted.block !== block);
    const together = rows.slice(at, end === -1 ? rows.length : end);
    const rounds = Math.max(...together.map(({ sets }) => sets));
    for (let round = 0; round < rounds; round += 1) {
      for (const one of together) if (round < one.sets) visit(one, round);
    }
    at += together.length;
  }
}

/**
 * Before the first row with something in hand, and wherever the next one is not sure to want the same. Inside a circuit
 * no plates are changed: from its second round on a bell is taken up at most.
 */
function changeTo(row: TimedRow, round: number, held: TimedRow | null, rules: Rulebook): Seconds {
  const { change, only } = row.times;
  if (held === row || (held !== null && only !== null && held.times.only === only)) return 0;
  return round > 0 ? Math.min(change, rules.valueOf(CHANGE_OF_BELL)) : change;
}
