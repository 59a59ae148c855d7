/**
 * What marks say a side can lift: of each exercise and side one set, the one in the middle, laid down as a test so that
 * it can be quoted. A set that was a test counts as one the coach took.
 */
import type { Test } from '../../../model/client.js';
import type { Day } from '../../../model/day.js';
import type { Exercise } from '../../../model/exercise.js';
import type { DoneSet } from '../../../model/history.js';
import type { ExerciseId, Side } from '../../../model/identity.js';
import type { PlanLoad } from '../../../model/plan.js';
import type { Grams, Mass, Tenths } from '../../../model/quantity.js';
import { normalReps, tempoFactor } from '../../capacity/tempo-factor.js';
import type { Rulebook } from '../../rulebook.js';
import { DONE_MEDIAN } from '../../rules/done-median.js';
import { DONE_SIDE } from '../../rules/done-side.js';
import { DONE_UNSAID } from '../../rules/done-unsaid.js';
import type { Remembering } from '../recall.js';
import { type MarkedRow, resistedIn, resistedWith } from './marked-rows.js';
import { sinceBreak } from './since-break.js';

export interface MarkedTest {
  readonly test: Test;
  /** How it is known. */
  readonly by: 'test' | 'said' | 'unsaid';
  /** Of how many it is the one in the middle. */
  readonly of: number;
}

export interface Evidence {
  readonly exercise: Exercise;
  readonly side: Side | 'both';
  readonly set: DoneSet;
  readonly reps: number;
  readonly reserve: Tenths;
  /** In grams times tenths, at normal tempo. */
  readonly k: number;
  /** In grams, body and load together. */
  readonly resisted: number;
  /** Fewer reps than the range begins with, and not one left. */
  readonly missed: boolean;
  readonly by: MarkedTest['by'];
  readonly inCircuit: boolean;
  readonly day: Day;
}

/**
 * `rows` are the recent ones, earliest first; the client's breaks are those of marks too. At most one test of each exercise and side, in the order first marked.
 */
export function markedTests(remembering: Remembering, rows: readonly MarkedRow[]): readonly MarkedTest[] {
  const { client, exercises, rules } = remembering;
  const all = rows.flatMap((row) => evidenceIn(remembering, row));
  const keys = [...new Set(all.map(({ exercise, side }) => `${exercise.id}/${side}`))];
  return keys.flatMap((key): readonly MarkedTest[] => {
    const own = all.filter(({ exercise, side }) => `${exercise.id}/${side}` === key);
    const [first] = own;
    if (first === undefined) return [];
    const taken = client.tests.filter(
      ({ exercise, side, date }) =>
        exercises.get(exercise)?.id === first.exercise.id && speaksOf(side, first.side) && date <= remembering.today,
    );
    const tests = own.filter(({ by }) => by === 'test');
    const tested = Math.max(-1, ...taken.map(({ date }) => date), ...tests.map(({ day }) => day));
    const since = own.filter(({ by, day }) => by !== 'test' && day > tested);
    const newer = sinceBreak(remembering, since, ({ day }) => day);
    const said = newer.filter(({ by }) => by === 'said');
    const found = middleOf(said.length > 0 ? said : newer, rules);
    const latest = tests.filter(({ day }) => day === tested).sort((a, b) => a.k - b.k)[0];
    const deciding = found ?? (latest === undefined ? null : { evidence: latest, of: 1 });
    if (deciding === null || isBeyond(remembering, deciding, latestOf(taken))) return [];
    return [testOf(deciding.evidence, deciding.of, client)];
  });
}

const latestOf = (tests: readonly Test[]): readonly Test[] =>
  tests.filter(({ date }) => tests.every((one) => one.date <= date));

/**
 * What marks that are not at hand any more came to stands among the tests, as one of them: of it and a single newer one
 * the lower, which is never more than all of them together would say.
 */
function isBeyond(
  { client, rules }: Remembering,
  { evidence, of }: { readonly evidence: Evidence; readonly of: number },
  taken: readonly Test[],
): boolean {
  if (of > 1 || evidence.by === 'test') return false;
  const bodyMass = client.bodyMass?.mass.grams ?? null;
  return taken.some(({ marked, load, reps, reserve, tempo }) => {
    const resisted = resistedWith(load?.grams ?? 0, evidence.exercise, bodyMass);
    return (
      marked === true &&
      resisted * (300 + normalReps(10 * reps + reserve, tempoFactor(tempo ?? 'normal', rules))) < evidence.k
    );
  });
}

const speaksOf = (side: Side | 'both', of: Side | 'both'): boolean => side === of || side === 'both' || of === 'both';

/**
 * Of the last so many the one in the middle, of an even number the lower of the two. A set that fell short of the range
 * with none left and a load heavier than one that kept to it says that the load was too heavy, and nothing of the lighter one.
 */
function middleOf(newer: readonly Evidence[], rules: Rulebook): { evidence: Evidence; of: number } | null {
  const recent = newer.slice(-rules.valueOf(DONE_MEDIAN));
  const kept = Math.min(...recent.filter(({ missed }) => !missed).map(({ resisted }) => resisted));
  const last = recent.filter(({ missed, resisted }) => !missed || resisted <= kept);
  const evidence = [...last].sort((a, b) => a.k - b.k || b.day - a.day)[Math.floor((last.length - 1) / 2)];
  return evidence === undefined ? null : { evidence, of: last.length };
}

const SETS: readonly DoneSet['kind'][] = ['feeler', 'trial', 'test', 'work'];

/** A row on a ladder has no reps to failure to count by. */
export function evidenceIn(remembering: Remembering, marked: MarkedRow): readonly Evidence[] {
  const { row } = marked;
  if (row.rung !== undefined) return [];
  const done = row.sets.filter(({ kind, done, reps }) => SETS.includes(kind) && done !== 'left out' && (reps ?? 0) > 0);
  const sides = [...new Set(done.map(({ side }) => side))];
  return sides.flatMap((side) => {
    const own = done.filter((set) => set.side === side);
    return [...testIn(remembering, marked, own), ...workIn(remembering, marked, own)];
  });
}

/** The reserve said of a side after its last set; of two words for both sides the lower. */
function saidOf({ row }: MarkedRow, side: Side | 'both'): Tenths | null {
  const said = row.reserve.filter((one) => speaksOf(one.side, side)).map(({ reserve }) => reserve);
  return said.length === 0 ? null : Math.min(...said);
}

/**
 * A test set, where its reps were said and not only ticked: the plan names no number of them. It stops with so many
 * left; where nothing was done after it and a reserve was said, with that.
 */
function testIn(remembering: Remembering, marked: MarkedRow, own: readonly DoneSet[]): readonly Evidence[] {
  const set = own.find(({ kind, asPlanned }) => kind === 'test' && !asPlanned);
  if (set === undefined) return [];
  const said = own.at(-1) === set ? saidOf(marked, set.side) : null;
  const evidence = evidenceOf(remembering, marked, set, said ?? set.planned?.stopAt?.reserve ?? 0, 'test');
  return evidence === null ? [] : [evidence];
}

/**
 * The last set with the reserve said after it, or a set of that day that proves more by its reps alone. Where a feeler set went before it nobody knows which of them was meant:
 * the lower. A published measure is counted by itself alone.
 */
function workIn(remembering: Remembering, marked: MarkedRow, own: readonly DoneSet[]): readonly Evidence[] {
  const last = own.at(-1);
  if (last === undefined || last.kind === 'test') return [];
  const exercise = remembering.exercises.get(last.exercise);
  if (exercise === undefined || exercise.facts.measure !== undefined) return [];
  const said = saidOf(marked, last.side);
  if (said === null) return unsaidIn(remembering, marked, last);
  const felt = own.filter(({ kind }) => kind === 'feeler');
  const read = [...new Set([...felt, last])].flatMap((set) => evidenceOf(remembering, marked, set, said, 'said') ?? []);
  const [lowest] = read.sort((a, b) => a.k - b.k);
  if (lowest === undefined) return [];
  // The last set is the most tired one. Whatever was done before it that day could be done, with none left at least.
  const proven = own
    .filter((set) => set.exercise === last.exercise && set.kind !== 'test')
    .flatMap((set) => evidenceOf(remembering, marked, set, 0, 'said') ?? []);
  return [proven.reduce((best, one) => (one.k > best.k ? one : best), lowest)];
}

/** Nothing was said: never more than the plan itself predicted, nor less than what was done. */
function unsaidIn(remembering: Remembering, marked: MarkedRow, last: DoneSet): readonly Evidence[] {
  const { client, exercises, history, rules } = remembering;
  const { row, session, key } = marked;
  const { planned, reps = 0 } = last;
  const exercise = exercises.get(last.exercise);
  const block = history.blocks.find(({ block }) => block === session.block);
  const strand = block?.plan.inputs.strands.find(({ id }) => id === key);
  const unknown =
    strand?.capacity === null || row.sets.some((set) => set.kind === 'feeler' || set.planned?.choose !== undefined);
  if (rules.valueOf(DONE_UNSAID) === 0 || last.kind !== 'work' || exercise === undefined || unknown) return [];
  if (planned?.reps === undefined || planned.reserve === undefined) return [];
  if (exercises.get(planned.exercise ?? row.exercise)?.id !== exercise.id || last.tempo !== row.tempo) return [];
  const bodyMass = client.bodyMass?.mass.grams ?? null;
  const asked = resistedIn({ ...withoutLoad(last), ...loadOf(planned.load) }, row, exercise, bodyMass);
  const held = resistedIn(last, row, exercise, bodyMass);
  if (asked === null || held === null) return [];
  // Where loads are not counted, a prediction is for the load it was made for.
  const same = loadKey(planned.load) === loadKey(last.load);
  const toFailure = 10 * planned.reps + planned.reserve;
  const predicted = same ? toFailure : held > 1 ? Math.floor((asked * (300 + toFailure) - 300 * held) / held) : 0;
  const reserve = Math.max(0, Math.min(planned.reserve, predicted - 10 * reps));
  const evidence = evidenceOf(remembering, marked, last, reserve, 'unsaid');
  return evidence === null ? [] : [evidence];
}

const withoutLoad = ({ load: _, ...set }: DoneSet): DoneSet => set;
const loadOf = (load: PlanLoad | undefined): Pick<DoneSet, 'load'> => (load === undefined ? {} : { load });
const loadKey = (load: PlanLoad | undefined): string => (load === undefined ? '' : `${load.band ?? load.grams}`);

function evidenceOf(
  { client, exercises, rules }: Remembering,
  { row, day }: MarkedRow,
  set: DoneSet,
  reserve: Tenths,
  by: Evidence['by'],
): Evidence | null {
  const exercise = exercises.get(set.exercise);
  const { reps } = set;
  if (exercise === undefined || reps === undefined || reps < 1) return null;
  const resisted = resistedIn(set, row, exercise, client.bodyMass?.mass.grams ?? null);
  if (resisted === null) return null;
  const k = resisted * (300 + normalReps(10 * reps + reserve, tempoFactor(set.tempo, rules)));
  const apart = exercise.facts.sides === 'each' && rules.valueOf(DONE_SIDE) > 0;
  return {
    exercise,
    side: apart ? set.side : 'both',
    set,
    reps,
    reserve,
    k,
    resisted,
    missed: set.kind === 'work' && row.asked.unit === 'reps' && reps < row.asked.min && reserve < 10,
    by,
    inCircuit: row.inCircuit,
    day,
  };
}

function testOf(evidence: Evidence, of: number, client: Remembering['client']): MarkedTest {
  const { exercise, side, set, reps, reserve, by, inCircuit, day } = evidence;
  const id: ExerciseId = exercise.id;
  const load = massOf(set.load);
  const test: Test = {
    exercise: id,
    side,
    ...(load === null ? {} : { load }),
    reps,
    reserve,
    ...(set.tempo === 'normal' ? {} : { tempo: set.tempo }),
    inCircuit,
    date: day,
    marked: true,
    place: client.place,
  };
  return { test, by, of };
}

/** In the figures it was printed with, where they say one mass; else in kilograms. */
function massOf(load: PlanLoad | undefined): Mass | null {
  if (load === undefined || load.band !== undefined) return null;
  const [, figure, unit] = /^([\d.]+)\s(kg|lb)$/.exec(load.label) ?? [];
  const grams: Grams = load.grams;
  if (figure !== undefined && (unit === 'kg' || unit === 'lb')) return { grams, figure, unit };
  return { grams, figure: String(grams / 1000), unit: 'kg' };
}
