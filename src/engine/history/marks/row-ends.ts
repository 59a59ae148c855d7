/** Where each walked row ended: with which version, load and tempo, what that earned, and whether it fell short. */
import { isoOfDay } from '../../../model/day.js';
import type { Exercise } from '../../../model/exercise.js';
import type { DoneRow, DoneSet } from '../../../model/history.js';
import type { ExerciseId } from '../../../model/identity.js';
import type { TempoStep } from '../../../model/programme.js';
import type { Grams, Tenths } from '../../../model/quantity.js';
import type { ReasonInput, Rule } from '../../../model/reason.js';
import { walkValues } from '../../rows/walk-values.js';
import { DONE_EARNED } from '../../rules/done-earned.js';
import { DONE_EASIER } from '../../rules/done-easier.js';
import { DONE_GREATEST } from '../../rules/done-greatest.js';
import { DONE_MISSED } from '../../rules/done-missed.js';
import { DONE_OVER_TARGET } from '../../rules/done-over-target.js';
import type { LastWork, Remembering } from '../recall.js';
import { gramsKnown, type MarkedRow, plannedLoad, resistedIn, workDone } from './marked-rows.js';

export interface RowEnd {
  readonly key: string;
  readonly exercise: ExerciseId;
  readonly last: LastWork;
  /** What made it so, besides the marks themselves. */
  readonly because: { readonly rule: Rule; readonly inputs: readonly ReasonInput[] } | null;
}

/** One occurrence in which work was done. */
interface Worked {
  readonly marked: MarkedRow;
  readonly sets: readonly DoneSet[];
  readonly exercise: Exercise;
  /** The least of its sets. */
  readonly grams: Grams;
  readonly tempo: TempoStep;
}

/**
 * `rows` are those of one row, earliest first. Easy weeks neither count nor break. More than one where a row ended in an
 * easier version: the row's own, one load lighter, stands in where that is no version of the row.
 */
export function rowEnds(remembering: Remembering, rows: readonly MarkedRow[]): readonly RowEnd[] {
  const all = rows.flatMap((marked) => (marked.session.easy ? [] : (workedIn(remembering, marked) ?? [])));
  const easier = trailing(all, ({ sets }) => sets.every(({ done }) => done === 'easier'));
  const once = easier < remembering.rules.valueOf(DONE_EASIER) ? easier : 0;
  // Chosen less often than that, it says nothing but that what was earned is not earned running.
  const worked = all.slice(0, all.length - once);
  const last = worked.at(-1);
  if (last === undefined) return [];
  const { rules } = remembering;
  const day = { name: 'marked', value: isoOfDay(last.marked.day), unit: '' };
  if (fellShort(last)) {
    const kept = worked.findLast(
      (one) => one !== last && !fellShort(one) && one.exercise === last.exercise && one.grams <= last.grams,
    );
    const missed = {
      lighter: kept === undefined ? rules.valueOf(DONE_MISSED) : 0,
      short: true,
      earned: 0,
      tops: 0,
    } as const;
    const load = kept === undefined || kept.grams === 0 ? [] : [{ name: 'load', value: kept.grams, unit: 'g' }];
    const inputs = [{ name: 'exercise', value: last.exercise.id, unit: '' }, day, ...load];
    const end = endOf(kept ?? last, missed);
    return [{ ...end, last: { ...end.last, day: last.marked.day }, because: { rule: DONE_MISSED, inputs } }];
  }
  if (easier > once) return easierEnds(remembering, last, day);
  const over = once === 0 && overTarget(remembering, worked);
  const tops = once > 0 ? 0 : earnedIn(remembering, worked);
  const earned = over ? 2 : tops;
  const because = over
    ? { rule: DONE_OVER_TARGET, inputs: [{ name: 'value', value: rules.valueOf(DONE_OVER_TARGET), unit: 'tenths' }] }
    : earned > 0
      ? { rule: DONE_EARNED, inputs: [{ name: 'earned', value: earned, unit: '' }] }
      : null;
  return [{ ...endOf(last, { lighter: 0, short: false, earned, tops }), because }];
}

function easierEnds(remembering: Remembering, last: Worked, day: ReasonInput): readonly RowEnd[] {
  const { marked, exercise } = last;
  const own = remembering.exercises.get(marked.row.exercise);
  const inputs = [{ name: 'exercise', value: exercise.id, unit: '' }, day];
  const because = { rule: DONE_EASIER, inputs };
  const lower = { lighter: 1, short: true, earned: 0, tops: 0 } as const;
  if (own === undefined || own === exercise) return [{ ...endOf(last, lower), because }];
  const planned = marked.row.sets.flatMap((set) => set.planned ?? []).filter(({ kind }) => kind === 'work');
  const grams = Math.min(...planned.map(({ load }) => load?.grams ?? 0));
  const instead = { ...last, exercise: own, grams: Number.isFinite(grams) ? grams : 0 };
  return [
    { ...endOf(last, { ...lower, lighter: 0 }), because },
    { ...endOf(instead, lower), because },
  ];
}

function workedIn({ exercises }: Remembering, marked: MarkedRow): Worked | null {
  const done = workDone(marked.row);
  const last = done.at(-1);
  const exercise = last === undefined ? undefined : exercises.get(last.exercise);
  if (last === undefined || exercise === undefined || marked.row.rung !== undefined) return null;
  // A published measure is timed, and no row of work.
  if (marked.row.asked.unit !== 'reps') return null;
  const sets = done.filter((set) => exercises.get(set.exercise) === exercise);
  // Few reps are few with whatever they were done: of a load that was not said, with no less than was planned.
  const short = fellShort({ marked, sets });
  const loads = sets.flatMap((set) => {
    const planned = short && set.load === undefined ? plannedLoad(set, marked.row)?.grams : undefined;
    return planned ?? gramsKnown(set, marked.row, exercise) ?? [];
  });
  if (loads.length < sets.length) return null;
  return { marked, sets, exercise, grams: Math.min(...loads), tempo: last.tempo };
}

/**
 * A set below the bottom of the range, or below what was planned where that was less; or one left out while others were
 * done, time was not short, and less was left after them than asked.
 */
function fellShort({ marked, sets }: Pick<Worked, 'marked' | 'sets'>): boolean {
  const { row, session } = marked;
  const few = sets.some(({ done, reps, planned, kind }) => {
    const least = Math.min(row.asked.min, kind === 'work' ? (planned?.reps ?? row.asked.min) : row.asked.min);
    return done !== 'easier' && reps !== undefined && reps < least;
  });
  if (few) return true;
  const leftOut = row.sets.some(({ kind, done }) => kind === 'work' && done === 'left out');
  const { reserve: asked } = row.asked;
  return (
    leftOut && session.today !== 'short of time' && asked !== null && row.reserve.some(({ reserve }) => reserve < asked)
  );
}

function trailing(worked: readonly Worked[], holds: (one: Worked) => boolean): number {
  const broken = worked.findLastIndex((one) => !holds(one));
  return worked.length - 1 - broken;
}

/** With every set as long and as heavy as planned, or more, and in the range: how few were planned says nothing. */
function overTarget({ rules }: Remembering, worked: readonly Worked[]): boolean {
  const more = rules.valueOf(DONE_OVER_TARGET);
  const isOver = ({ marked, sets, exercise }: Worked): boolean => {
    const { reserve, asked } = marked.row;
    const { reserve: target } = asked;
    if (target === null || reserve.length === 0 || !reserve.every((one) => one.reserve >= target + more)) return false;
    const inRange = ({ done, reps }: DoneSet): boolean => done !== 'easier' && (reps ?? 0) >= asked.min;
    return isWhole({ marked, sets }) && sets.every((set) => inRange(set) && reachedPlan(set, marked.row, exercise));
  };
  return trailing(worked, isOver) >= 2;
}

const reachedPlan = (set: DoneSet, row: DoneRow, exercise: Exercise): boolean =>
  (set.reps ?? 0) >= (set.planned?.reps ?? 0) &&
  (gramsKnown(set, row, exercise) ?? 0) >= (set.planned?.load?.grams ?? 0);

/** Every set of work was marked as done, on every side; a trial stands in the place of one. */
function isWhole({ marked }: Pick<Worked, 'marked' | 'sets'>): boolean {
  const { row } = marked;
  const done = row.sets.filter(({ kind, done }) => ['work', 'test', 'trial'].includes(kind) && done !== 'left out');
  return done.length >= row.asked.sets * (row.sides === 'each' ? 2 : 1);
}

/**
 * As the walk counts: occurrences at the top from the last one back, with the same option; those planned below the top
 * neither count nor break, and one that missed it, or reached it with less than the asked reserve, ends the count.
 */
function earnedIn({ rules }: Remembering, worked: readonly Worked[]): 0 | 1 | 2 {
  const most = rules.valueOf(DONE_EARNED);
  const last = worked.at(-1);
  const { tolerance } = walkValues(rules);
  let earned = 0;
  for (const one of [...worked].reverse()) {
    if (last === undefined || !sameOption(one, last) || earned >= most) break;
    const { row } = one.marked;
    const top = row.asked.max;
    const atTop = isWhole(one) && one.sets.every(({ reps, done }) => done !== 'easier' && (reps ?? 0) >= top);
    const least = (row.asked.reserve ?? 0) - tolerance;
    if (atTop && hasLeft(one, least)) earned += 1;
    else if (atTop || one.sets.some(({ planned }) => (planned?.reps ?? 0) >= top)) break;
  }
  return earned >= 2 ? 2 : earned >= 1 ? 1 : 0;
}

/** As said; where nothing was said, as the plan predicted of sets done as it has them. */
function hasLeft({ marked, sets }: Worked, least: Tenths): boolean {
  const { reserve } = marked.row;
  if (reserve.length > 0) return reserve.every((one) => one.reserve >= least);
  return sets.every(({ planned, reps, ...set }) => {
    const asPlanned = planned?.reps === reps && planned?.load?.grams === set.load?.grams;
    return asPlanned && planned?.kind === 'work' && (planned.reserve ?? -1) >= least;
  });
}

const sameOption = (a: Worked, b: Worked): boolean =>
  a.exercise === b.exercise && a.grams === b.grams && a.tempo === b.tempo;

function endOf(
  { marked, sets, exercise, grams, tempo }: Worked,
  outcome: Pick<LastWork, 'lighter' | 'short' | 'earned' | 'tops'>,
): Omit<RowEnd, 'because'> {
  const { asked } = marked.row;
  const reps = Math.min(...sets.map((set) => set.reps ?? 0));
  const last: LastWork = {
    day: marked.day,
    grams,
    tempo,
    range: { min: asked.min, max: asked.max },
    greatest: null,
    reps,
    ...outcome,
  };
  return { key: marked.key, exercise: exercise.id, last };
}

/** The greatest reps × R of one set of work, by exercise; of what was planned too, as the walk counts it. */
export function greatestDone(remembering: Remembering, rows: readonly MarkedRow[]): ReadonlyMap<ExerciseId, number> {
  const greatest = new Map<ExerciseId, number>();
  if (remembering.rules.valueOf(DONE_GREATEST) === 0) return greatest;
  const bodyMass = remembering.client.bodyMass?.mass.grams ?? null;
  for (const { row } of rows) {
    if (row.rung !== undefined) continue;
    for (const set of workDone(row)) {
      const exercise = remembering.exercises.get(set.exercise);
      const resisted = exercise === undefined ? null : resistedIn(set, row, exercise, bodyMass);
      if (exercise === undefined || resisted === null || set.reps === undefined) continue;
      greatest.set(exercise.id, Math.max(greatest.get(exercise.id) ?? 0, set.reps * resisted));
    }
  }
  return greatest;
}
