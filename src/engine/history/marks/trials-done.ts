/** Loads that were tried and done as asked, in so many weeks; what fell short since takes it back. */
import type { Day } from '../../../model/day.js';
import type { DoneSet } from '../../../model/history.js';
import type { ExerciseId } from '../../../model/identity.js';
import type { Grams, Tenths } from '../../../model/quantity.js';
import { DONE_TRIAL } from '../../rules/done-trial.js';
import type { Remembering, TrialDone } from '../recall.js';
import type { MarkedRow } from './marked-rows.js';

interface Counted {
  reps: number;
  weeks: ReadonlySet<string>;
  failed: boolean;
}

type Counts = Map<ExerciseId, Map<Grams, Counted>>;

/**
 * `rows` are the recent ones, earliest first. Of each exercise, lightest first. A trial says nothing once the coach has
 * tested its exercise; one not done as asked begins the count anew, and so does work that fell short with as much or less.
 */
export function trialsDone(
  remembering: Remembering,
  rows: readonly MarkedRow[],
): ReadonlyMap<ExerciseId, readonly TrialDone[]> {
  const counts: Counts = new Map();
  for (const marked of rows) {
    if (marked.row.rung !== undefined) continue;
    for (const { exercise, sets } of byExercise(remembering, marked, 'trial')) {
      if (!testedSince(remembering, exercise, marked.day)) count(counts, remembering, marked, exercise, sets);
    }
    for (const { exercise, sets } of byExercise(remembering, marked, 'work')) {
      const short = sets.filter((set) => fellShort(marked, set)).map((set) => plannedGrams(set) ?? 0);
      if (short.length > 0) takeBack(counts, exercise, Math.min(...short));
    }
  }
  const needed = remembering.rules.valueOf(DONE_TRIAL);
  return new Map(
    [...counts].map(([exercise, loads]) => [
      exercise,
      [...loads]
        .sort(([a], [b]) => a - b)
        .map(([grams, { reps, weeks, failed }]): TrialDone => {
          return { grams, reps, weeks: weeks.size, opened: weeks.size >= needed, failed };
        }),
    ]),
  );
}

/** Of what was planned, whatever was done. */
function byExercise(
  { exercises }: Remembering,
  { row }: MarkedRow,
  kind: 'trial' | 'work',
): readonly { readonly exercise: ExerciseId; readonly sets: readonly DoneSet[] }[] {
  const own = new Map<ExerciseId, DoneSet[]>();
  for (const set of row.sets) {
    if (set.kind !== kind || set.planned === undefined) continue;
    const id = exercises.get(set.planned.exercise ?? row.exercise)?.id;
    if (id !== undefined) own.set(id, [...(own.get(id) ?? []), set]);
  }
  return [...own].map(([exercise, sets]) => ({ exercise, sets }));
}

function testedSince({ client, exercises, today }: Remembering, id: ExerciseId, day: Day): boolean {
  return client.tests.some(({ exercise, date }) => exercises.get(exercise)?.id === id && date > day && date <= today);
}

function count(
  counts: Counts,
  remembering: Remembering,
  marked: MarkedRow,
  exercise: ExerciseId,
  sets: readonly DoneSet[],
): void {
  const loads = sets.flatMap((set) => plannedGrams(set) ?? []);
  const grams = Math.min(...loads);
  if (loads.length < sets.length || loads.some((one) => one !== grams)) return;
  const { session, row } = marked;
  // With which load, nobody said.
  if (sets.some((set) => set.done !== 'left out' && gramsDone(set) === null)) return;
  const leftOut = sets.some(({ done }) => done === 'left out');
  if (leftOut && session.today === 'short of time') return;
  if (!sets.every((set) => asAsked(remembering, exercise, set))) {
    const own = counts.get(exercise) ?? new Map<Grams, Counted>();
    counts.set(exercise, own.set(grams, { reps: 0, weeks: new Set(), failed: true }));
    return;
  }
  const sided = row.sides === 'each' && new Set(sets.map(({ side }) => side)).size < 2;
  if (sided || !row.reserve.every(({ reserve }) => reserve >= floorOf(remembering, marked))) return;
  const own = counts.get(exercise) ?? new Map<Grams, Counted>();
  const before = own.get(grams);
  const weeks = new Set([...(before?.weeks ?? []), `${session.block}/${session.week}`]);
  const reps = Math.min(...sets.map(({ planned }) => planned?.reps ?? 1));
  counts.set(exercise, own.set(grams, { reps, weeks, failed: before?.failed ?? false }));
}

function asAsked({ exercises }: Remembering, exercise: ExerciseId, set: DoneSet): boolean {
  const { done, reps, planned } = set;
  if (done !== 'done' || exercises.get(set.exercise)?.id !== exercise) return false;
  return (reps ?? 0) >= (planned?.reps ?? 1) && (gramsDone(set) ?? 0) >= (plannedGrams(set) ?? 0);
}

/** Made easier, or below the bottom of the range, or below what was planned where that was less. */
function fellShort({ row }: MarkedRow, { done, reps, planned }: DoneSet): boolean {
  const least = Math.min(row.asked.min, planned?.reps ?? row.asked.min);
  return done === 'easier' || (done !== 'left out' && reps !== undefined && reps < least);
}

function takeBack(counts: Counts, exercise: ExerciseId, from: Grams): void {
  const own = counts.get(exercise);
  for (const grams of own?.keys() ?? []) {
    if (grams >= from) own?.set(grams, { reps: 0, weeks: new Set(), failed: true });
  }
}

/** As said, or as planned where it was only ticked; 0 for the body alone, `null` for a band and where it is not known. */
function gramsDone({ load, planned, asPlanned }: DoneSet): Grams | null {
  const own = load ?? (asPlanned ? planned?.load : undefined);
  if (own === undefined) return planned?.load === undefined ? 0 : null;
  return own.band === undefined ? own.grams : null;
}

/** 0 for the body alone, `null` for a band. */
function plannedGrams({ planned }: DoneSet): Grams | null {
  const load = planned?.load;
  return load === undefined ? 0 : load.band === undefined ? load.grams : null;
}

/** The highest of its week, as the plan has them; the reserve asked where there is no plan to read. */
function floorOf({ history }: Remembering, { session, row }: MarkedRow): Tenths {
  const plan = history.blocks.find(({ block }) => block === session.block)?.plan;
  const floors = (plan?.inputs.floors ?? []).filter(({ weeks }) => weeks.includes(session.week));
  return floors.length === 0 ? (row.asked.reserve ?? 0) : Math.max(...floors.map(({ reserve }) => reserve));
}
