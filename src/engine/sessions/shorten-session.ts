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

/** A row with the sets it has in the short version, 0 where it has none; and the most it may have. */
interface Kept extends DoneRow {
  readonly most: number;
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
      rows.map(({ timed }) => timed),
      rules,
    );
  let kept = done.map(({ timed, item }): Kept => {
    return { timed: { ...timed, sets: 0, trial: false, test: 0 }, item, most: roundsOf(item) };
  });
  const add = (index: number): boolean => {
    const row = kept[index];
    if (row === undefined || row.timed.sets >= row.most) return false;
    const more = kept.with(index, { ...row, timed: { ...row.timed, sets: row.timed.sets + 1 } });
    const fits = secondsOf(more) <= cap;
    if (fits) kept = more;
    return fits;
  };
  const patterns = new Set<string>();
  const chosen: number[] = [];
  for (const index of inOrder(context, done)) {
    const row = done[index];
    if (row === undefined) continue;
    const pattern = patternOf(row.timed.fitted);
    if (patterns.has(pattern) && !context.programme.neverCut.includes(row.item.row)) continue;
    if (!add(index)) continue;
    patterns.add(pattern);
    chosen.push(index);
  }
  for (let grew = true; grew; ) grew = chosen.map(add).some((fits) => fits);
  return {
    minutes: minutesOf(secondsOf(kept), rules),
    sets: [...firstDrills(warmUp, drills, warming), ...keysOf(kept)],
  };
}

const roundsOf = (item: Item): number =>
  Math.max(0, ...item.sets.filter(({ kind }) => kind === 'work').map(({ round }) => round));

/** Places of the rows, those never cut first; without those behind a gate. */
function inOrder({ programme }: BlockContext, done: readonly DoneRow[]): readonly number[] {
  const never: number[] = [];
  const others: number[] = [];
  for (const [index, { item }] of done.entries()) {
    if (item.sets.some(({ gate }) => gate !== undefined)) continue;
    (programme.neverCut.includes(item.row) ? never : others).push(index);
  }
  return [...never, ...others];
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
    for (const one of together) if (one.timed.sets > 0) keys.push(...keysOfKind(one.item, ['warm-up', 'feeler']));
    const rounds = Math.max(...together.map(({ timed }) => timed.sets));
    for (let round = 1; round <= rounds; round += 1) {
      for (const one of together) {
        if (round <= one.timed.sets) keys.push(...keysOfKind(one.item, ['work'], round));
      }
    }
  }
  return keys;
}

const keysOfKind = ({ sets }: Item, kinds: readonly string[], round?: number): readonly SetKey[] =>
  sets.filter((set) => kinds.includes(set.kind) && (round === undefined || set.round === round)).map(({ key }) => key);
