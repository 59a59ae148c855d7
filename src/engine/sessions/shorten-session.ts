/** The short version of a session: which of its own sets, in order, count as the session done on a bad day. */
import type { SetKey } from '../../model/identity.js';
import type { Item, PlanSession } from '../../model/plan.js';
import type { BlockContext } from '../block-context.js';
import { SHORT_MINUTES } from '../rules/short-minutes.js';
import { SHORT_WARM_UP } from '../rules/short-warm-up.js';
import { patternOf } from './choose-drills.js';
import type { Around } from './compose-around.js';
import { minutesOf, secondsOfRows, type TimedRow } from './count-seconds.js';

/** A row done in a session, and what is planned for it there. */
export interface DoneRow {
  readonly timed: TimedRow;
  readonly item: Item;
}

/** A row of the short version with the sets it has there. */
interface Kept extends DoneRow {
  readonly rounds: number;
}

/**
 * A few minutes of the warm-up, its first exercises once; then a set each, and another each, of the rows never cut and
 * of one row of every other pattern, the first that fits, as long as the clock allows. A row's lighter or feeler set
 * comes with its first set. Never a trial, a test, nor any set of a row that stands behind a gate that day.
 */
export function shortenSession(
  context: BlockContext,
  warmUp: Around,
  drills: readonly Item[],
  done: readonly DoneRow[],
): PlanSession['short'] {
  const { rules } = context;
  const warming = 60 * Math.min(rules.valueOf(SHORT_WARM_UP), warmUp.minutes);
  const cap = 60 * rules.valueOf(SHORT_MINUTES);
  const secondsOf = (rows: readonly Kept[]) =>
    warming +
    secondsOfRows(
      rows.map(({ timed, rounds }) => ({ ...timed, sets: rounds, trial: false, test: 0 })),
      rules,
    );
  const order = inOrder(context, done);
  let kept: readonly Kept[] = done.map((row) => ({ ...row, rounds: 0 }));
  const add = (item: Item): boolean => {
    const more = kept.map((row) => (row.item === item ? { ...row, rounds: row.rounds + 1 } : row));
    const fits = (more.find((row) => row.item === item)?.rounds ?? 0) <= roundsOf(item) && secondsOf(more) <= cap;
    if (fits) kept = more;
    return fits;
  };
  const patterns = new Set<string>();
  for (const { item, timed } of order) {
    const pattern = patternOf(timed.fitted);
    if (patterns.has(pattern) && !context.programme.neverCut.includes(item.row)) continue;
    if (add(item)) patterns.add(pattern);
  }
  const chosen = order.filter(({ item }) => kept.some((row) => row.item === item && row.rounds > 0));
  for (let grew = true; grew; ) grew = chosen.map(({ item }) => add(item)).some((fits) => fits);
  return {
    minutes: minutesOf(secondsOf(kept), rules),
    sets: [...firstDrills(warmUp, drills, warming), ...keysOf(kept)],
  };
}

const roundsOf = (item: Item): number =>
  Math.max(0, ...item.sets.filter(({ kind }) => kind === 'work').map(({ round }) => round));

/** Rows never cut first; without those behind a gate. */
function inOrder({ programme }: BlockContext, done: readonly DoneRow[]): readonly DoneRow[] {
  const open = done.filter(({ item }) => item.sets.every(({ gate }) => gate === undefined));
  const never = open.filter(({ item }) => programme.neverCut.includes(item.row));
  return [...never, ...open.filter((row) => !never.includes(row))];
}

/** Each once through, as many as fit; the rest of the minutes is easy walking. */
function firstDrills(warmUp: Around, items: readonly Item[], seconds: number): readonly SetKey[] {
  const keys: SetKey[] = [];
  let left = seconds;
  for (const drill of warmUp.drills) {
    if (drill.seconds > left) break;
    left -= drill.seconds;
    const sets = items.find(({ row }) => row === drill.row)?.sets ?? [];
    keys.push(...sets.filter(({ round }) => round <= drill.sets).map(({ key }) => key));
  }
  return keys;
}

/** Row by row; in a circuit round by round. */
function keysOf(kept: readonly Kept[]): readonly SetKey[] {
  const keys: SetKey[] = [];
  const told = new Set<object>();
  for (const row of kept) {
    const { block, inCircuit } = row.timed.fitted;
    if (told.has(inCircuit ? block : row)) continue;
    told.add(inCircuit ? block : row);
    const together = inCircuit ? kept.filter(({ timed }) => timed.fitted.block === block) : [row];
    for (const one of together) if (one.rounds > 0) keys.push(...keysOfKind(one.item, ['warm-up', 'feeler']));
    const rounds = Math.max(...together.map((one) => one.rounds));
    for (let round = 1; round <= rounds; round += 1) {
      for (const one of together) {
        if (round <= one.rounds) keys.push(...keysOfKind(one.item, ['work'], round));
      }
    }
  }
  return keys;
}

const keysOfKind = ({ sets }: Item, kinds: readonly string[], round?: number): readonly SetKey[] =>
  sets.filter((set) => kinds.includes(set.kind) && (round === undefined || set.round === round)).map(({ key }) => key);
