/** Planned against done, row by row, and the reserve said against the reserve asked. Only the block's own sessions. */
import type { DoneRow, DoneSession, DoneSet } from '../../model/history.js';
import type { ExerciseId } from '../../model/identity.js';
import type { PlanLoad, PlanSet } from '../../model/plan.js';
import type { EffortReviewed, RowReviewed } from '../../model/review.js';
import { isDone, wasDone } from './reviewing.js';

type Outcome = 'asPlanned' | 'more' | 'less' | 'easier' | 'leftOut' | 'unmarked';

interface Occurrence {
  readonly session: DoneSession;
  readonly row: DoneRow;
  readonly outcome: Outcome;
}

/** In order of first appearance. Sessions that were only opened say nothing of their rows. */
export function rowsReviewed(sessions: readonly DoneSession[]): readonly RowReviewed[] {
  const byRow = new Map<string, Occurrence[]>();
  for (const session of sessions.filter((one) => one.closed || isDone(one))) {
    for (const row of session.rows) {
      const key = `${session.session}/${row.row}`;
      const one = { session, row, outcome: outcomeOf(row) };
      const own = byRow.get(key);
      if (own === undefined) byRow.set(key, [one]);
      else own.push(one);
    }
  }
  return [...byRow.values()].flatMap((own) => reviewRow(own) ?? []);
}

function reviewRow(own: readonly Occurrence[]): RowReviewed | null {
  const last = own.at(-1);
  if (last === undefined) return null;
  const how = (outcome: Outcome): number => own.filter((one) => one.outcome === outcome).length;
  const done = own.filter(({ outcome }) => outcome !== 'leftOut' && outcome !== 'unmarked');
  const worked = done.map(({ row }) => workOf(row));
  const sum = (of: (work: Work) => number): number => worked.reduce((all, work) => all + of(work), 0);
  const lastDone = done.at(-1)?.row.sets.findLast((set) => isWork(set) && wasDone(set));
  return {
    session: last.session.session,
    row: last.row.row,
    exercise: last.row.exercise,
    sessions: own.length,
    asPlanned: how('asPlanned'),
    more: how('more'),
    less: how('less'),
    easier: how('easier'),
    leftOut: how('leftOut'),
    unmarked: how('unmarked'),
    quiet: own.length - 1 - own.findLastIndex(({ outcome }) => outcome !== 'leftOut' && outcome !== 'unmarked'),
    sets: { planned: sum(({ planned }) => planned.sets), done: sum((work) => work.done.sets) },
    amount: {
      planned: sum(({ planned }) => planned.amount),
      done: sum((work) => work.done.amount),
      unit: last.row.asked.unit,
    },
    load: { planned: lastDone?.planned?.load ?? null, done: lastDone?.load ?? null },
  };
}

/** What is asked for and done: warm-up sets are neither; a test and a trial stand in the place of work. */
const isWork = ({ kind }: DoneSet): boolean => kind === 'work' || kind === 'trial' || kind === 'test';

interface Totals {
  readonly sets: number;
  readonly amount: number;
  /** Amount times load, where every set has one in grams. */
  readonly volume: number | null;
}

interface Work {
  readonly planned: Totals;
  readonly done: Totals;
}

type Amounts = Pick<PlanSet, 'reps' | 'seconds' | 'metres' | 'load'>;

/** Sets that were marked tell what was planned of them; those of which nothing was marked are counted by what was asked. */
function workOf(row: DoneRow): Work {
  const sets = row.sets.filter(isWork);
  const done = sets.filter(wasDone);
  const planned = sets.flatMap((set) => askedOf(set, row) ?? []);
  const whole = row.asked.sets * (row.sides === 'each' ? 2 : 1);
  const missing = Math.max(0, whole - planned.length);
  const asked = totalsOf(planned, row);
  const each = planned.length === 0 ? row.asked.min : Math.floor(asked.amount / planned.length);
  return {
    planned: { ...asked, sets: planned.length + missing, amount: asked.amount + missing * each },
    done: totalsOf(done, row),
  };
}

/**
 * What was asked of one set; `null` for an extra one. Where a gate did not open, what is printed for that case; where a
 * feeler set finds the load, or a test the reps, whatever was done.
 */
function askedOf(set: DoneSet, { sets }: DoneRow): Amounts | null {
  const { planned, done } = set;
  if (planned === undefined) return null;
  const isFound = set.kind === 'test' || sets.some((one) => one.kind === 'feeler' || one.planned?.choose !== undefined);
  if (isFound && done !== 'left out') return set;
  const other = planned.otherwise?.find(
    ({ exercise, load, reps, seconds, metres }) =>
      exercise === set.exercise &&
      load?.label === set.load?.label &&
      (reps ?? seconds ?? metres) === (set.reps ?? set.seconds ?? set.metres),
  );
  return other ?? planned;
}

function totalsOf(sets: readonly Amounts[], { asked }: DoneRow): Totals {
  const amountOf = ({ reps, seconds, metres }: Amounts): number =>
    (asked.unit === 'reps' ? reps : asked.unit === 'seconds' ? seconds : metres) ?? 0;
  const amount = sets.reduce((sum, set) => sum + amountOf(set), 0);
  const grams = sets.map(({ load }) => (load?.band === undefined ? (load?.grams ?? 0) : null));
  const counted = grams.every((one) => one !== null && one > 0);
  const volume = sets.reduce((sum, set, index) => sum + amountOf(set) * (grams[index] ?? 0), 0);
  return { sets: sets.length, amount, volume: counted && sets.length > 0 ? volume : null };
}

/**
 * Easier where any set was. Fewer sets are less; else what the sets come to decides, times the load where every set has
 * one, and the load alone where they come to the same.
 */
function outcomeOf(row: DoneRow): Outcome {
  const sets = row.sets.filter(isWork);
  const done = sets.filter(wasDone);
  if (sets.length === 0) return row.sets.some(wasDone) ? 'asPlanned' : row.sets.length > 0 ? 'leftOut' : 'unmarked';
  if (done.length === 0) return 'leftOut';
  if (done.some(({ done: how }) => how === 'easier')) return 'easier';
  const work = workOf(row);
  if (work.done.sets < work.planned.sets) return 'less';
  // Those with nothing planned are extra.
  const paired = done.filter(({ planned }) => planned !== undefined);
  const asked = totalsOf(
    paired.flatMap((set) => askedOf(set, row) ?? []),
    row,
  );
  const did = totalsOf(paired, row);
  const most = did.volume !== null && asked.volume !== null ? did.volume - asked.volume : did.amount - asked.amount;
  if (most !== 0) return most > 0 ? 'more' : 'less';
  const heavier = paired.reduce((sum, set) => sum + Math.sign(weigh(set.load) - weigh(askedOf(set, row)?.load)), 0);
  if (heavier !== 0) return heavier > 0 ? 'more' : 'less';
  return work.done.sets > work.planned.sets ? 'more' : 'asPlanned';
}

/** Bands by their step, what has a mass by its grams: the two never meet in one exercise. */
const weigh = (load: PlanLoad | undefined): number => (load === undefined ? 0 : (load.step ?? load.grams ?? 0));

/** In order of first appearance; of each side its own word. Rows without an asked reserve are left out. */
export function effortReviewed(sessions: readonly DoneSession[]): readonly EffortReviewed[] {
  const said = new Map<ExerciseId, number[]>();
  for (const { rows } of sessions) {
    for (const { exercise, asked, reserve } of rows) {
      if (asked.reserve === null) continue;
      for (const one of reserve) said.set(exercise, [...(said.get(exercise) ?? []), one.reserve - asked.reserve]);
    }
  }
  return [...said].map(([exercise, all]) => {
    const mean = all.reduce((sum, one) => sum + one, 0) / all.length;
    return { exercise, difference: Math.sign(mean) * Math.floor(Math.abs(mean) + 0.5) + 0, n: all.length };
  });
}
