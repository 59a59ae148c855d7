/** One walked row from what was done on: its strand made again by the planner's own functions, and walked. */
import type { BlockContext } from '../engine/block-context.js';
import { setsOnReturn } from '../engine/breaks/returns.js';
import { readCapacity } from '../engine/capacity/read-capacity.js';
import { floorsOf, floorsOfRow } from '../engine/effort/plan-effort.js';
import { heaviestUpTo } from '../engine/kit/at-most.js';
import { planStrand } from '../engine/plan-strand.js';
import { trusted } from '../engine/rows/begin-row.js';
import type { Beginning, Begun } from '../engine/rows/beginning.js';
import { buildStrand } from '../engine/rows/build-strand.js';
import type { WalkFitted } from '../engine/rows/fit-rows.js';
import { asRecalled, beginWhereItEnded, recallOf } from '../engine/rows/from-marks.js';
import type { PlannedSession } from '../engine/sessions/plan-sets.js';
import type { Judged } from '../engine/versions/judge-version.js';
import { meetCautions } from '../engine/versions/meet-caution.js';
import type { Ground } from '../engine/walk/situation.js';
import type { WalkStep } from '../engine/walk-step.js';
import { day } from '../model/day.js';
import type { Exercise } from '../model/exercise.js';
import type { Item } from '../model/plan.js';
import type { ReplannedRow } from '../model/plan-inputs.js';
import type { Row } from '../model/programme.js';
import type { StrandInput } from '../model/strand.js';
import { earnedSince, NOWHERE, type OpenSession, type PlanContext } from './plan-context.js';

/** A row in a session that is still to come. */
export interface OpenItem {
  readonly at: OpenSession;
  readonly item: Item;
  /** Its place among the occurrences of the strand or ladder. */
  readonly index: number;
}

export type Rewalked =
  /** Nothing is planned with it until the coach has looked: it hurt, or nothing leaves the floor. */
  | { readonly kind: 'left out'; readonly because: 'pain' | 'nothing leaves the floor'; readonly exercise: Exercise }
  | {
      readonly kind: 'walked';
      readonly strand: StrandInput;
      readonly steps: readonly WalkStep[];
      readonly ground: Ground;
      readonly exercise: Exercise;
    }
  /** Still unknown: its feeler set stands as it is printed. */
  | { readonly kind: 'as printed' };

/** `open` are the row's occurrences that are still to come, in order; at least one. */
export function rewalk(plan: PlanContext, strand: StrandInput, row: ReplannedRow, open: readonly OpenItem[]): Rewalked {
  const { context, pained } = plan;
  const judged = strand.versions.map((version): Judged | null => {
    const exercise = context.exercises.get(version.exercise);
    if (exercise === undefined) return null;
    const met = meetCautions(exercise, pained);
    return {
      exercise,
      allowed: true,
      refusals: [],
      loads: version.loads,
      bands: [],
      signedOffTo: version.signedOffTo,
      care: met.filter(({ outcome }) => outcome === 'no gain'),
      refusedBy: met.filter(({ outcome }) => outcome === 'refused'),
      lapses: null,
      way: null,
      tooMany: false,
    };
  });
  const versions = judged.flatMap((one) => one ?? []);
  const own = versions[strand.start?.version ?? row.base];
  const target = context.exercises.get(row.target);
  if (versions.length < judged.length || own === undefined || target === undefined) return { kind: 'as printed' };
  if (recallOf(context, own).leave !== null || own.refusedBy.length > 0) {
    return { kind: 'left out', because: 'pain', exercise: own.exercise };
  }
  const fitted = fittedOf(strand, row, versions, target, own);
  const beginning = begin(plan, fitted, strand, row);
  const made = strandFrom(plan, fitted, strand, row, beginning, open);
  const result = planStrand(made);
  if (result.kind === 'feeler') return { kind: 'as printed' };
  if (result.kind === 'impossible') {
    return { kind: 'left out', because: 'nothing leaves the floor', exercise: own.exercise };
  }
  return { kind: 'walked', strand: made, steps: result.steps, ground: result.ground, exercise: own.exercise };
}

function fittedOf(
  strand: StrandInput,
  { base, dose, effort, percent, inCircuit, trials }: ReplannedRow,
  judged: readonly Judged[],
  target: Exercise,
  own: Judged,
): WalkFitted {
  const row: Row = {
    id: strand.row,
    target: { kind: 'exercise', id: target.id },
    dose,
    restSeconds: 0,
    tempi: strand.tempi.map(({ step }) => step),
    trials,
    optional: false,
    place: NOWHERE,
  };
  return {
    session: { id: strand.session, name: '', notes: [], blocks: [], place: NOWHERE },
    block: { name: '', kind: inCircuit ? 'circuit' : 'straight', rows: [row] },
    blockIndex: 0,
    row,
    written: row,
    inCircuit,
    dose,
    refitted: { dose: null, effort: null, signal: null },
    sets: Math.max(...strand.occurrences.map(({ sets }) => sets)),
    target,
    choice: { own, chosen: own, causes: [], byCause: false, steps: 0, refused: [] },
    chain: { versions: strand.versions, judged, base },
    planned: 'walk',
    reps: { min: strand.bottom, max: strand.top },
    effort,
    percent,
  };
}

/** Where it ended by its marks; else with what else was marked of its exercise; else as it was planned to begin. */
function begin(
  { context, since, made, lately, recalled }: PlanContext,
  fitted: WalkFitted,
  strand: StrandInput,
  row: ReplannedRow,
): Beginning {
  const chain = strand.versions;
  const role =
    row.byRole && strand.start !== null ? { role: 'main', main: strand.start.load, load: strand.start.load } : null;
  const ended = row.byRole ? null : beginWhereItEnded(context, fitted, chain);
  if (ended !== null) {
    const again = trusted(context, asRecalled(context, fitted, withEarned(lately, ended, strand, recalled)));
    return lately.worked.has(strand.id) ? again : notAbove(again, strand.start);
  }
  const own = fitted.chain.judged[row.base];
  const version = chain[row.base];
  const tested = own === undefined || version === undefined ? null : readCapacity(context, own, version);
  const found = { versions: chain, role: role === null ? null : { ...role, role: 'main' as const } };
  if (
    tested !== null &&
    own !== undefined &&
    version !== undefined &&
    tested.test.marked === true &&
    tested.test.date >= since
  ) {
    const load = row.byRole ? strand.start?.load : heaviestUpTo(version.loads, tested.grams)?.grams;
    if (load !== undefined) {
      const start = { version: row.base, load, tempo: 0, earned: 0 } as const;
      const begun: Begun = { ...found, how: 'tested', capacity: tested.capacity, start, tested, source: own };
      return trusted(context, asRecalled(context, fitted, begun));
    }
  }
  // A break that the plan knew of has been answered in it.
  const known =
    tested === null ? null : { ...tested, test: { ...tested.test, date: day(Math.max(tested.test.date, made)) } };
  const begun: Begun = {
    ...found,
    how: strand.capacity === null ? 'feeler' : 'tested',
    capacity: strand.capacity,
    start: strand.start,
    tested: known,
    source: own ?? null,
  };
  return trusted(context, asRecalled(context, fitted, begun));
}

/** Where nothing of the row was done since, the plan knew of its marks, and of what speaks against going on from them. */
function notAbove(begun: Beginning, planned: StrandInput['start']): Beginning {
  const { start } = begun;
  if (start === null || planned === null) return begun;
  const harder = start.version - planned.version || start.load - planned.load;
  return harder > 0 ? { ...begun, start: planned } : begun;
}

function withEarned(
  { recalls, worked }: PlanContext['lately'],
  begun: Begun,
  { id, start, versions }: StrandInput,
  recalled: PlanContext['recalled'],
): Begun {
  const own = begun.start;
  const here =
    own !== null &&
    start !== null &&
    own.version === start.version &&
    own.load === start.load &&
    own.tempo === start.tempo;
  if (own === null || start === null || !here) return begun;
  const exercise = versions[own.version]?.exercise;
  const since = exercise === undefined ? undefined : recalls.get(exercise)?.lastIn.get(id);
  const before = recalled.find((one) => one.exercise === exercise);
  const { tops } = before?.earned === 2 ? {} : (before?.rows?.find(({ row }) => row === id) ?? {});
  const done = worked.get(id) ?? 0;
  const earned = earnedSince(
    done === 0 ? start.earned : Math.min(start.earned, tops ?? 2),
    since?.earned ?? 0,
    done,
    own.earned,
  );
  return { ...begun, start: { ...own, earned } };
}

/** Never more than was printed: in sets, in gain, in trials and gates; never less in reserve. */
function strandFrom(
  { context }: PlanContext,
  fitted: WalkFitted,
  printed: StrandInput,
  row: ReplannedRow,
  beginning: Beginning,
  open: readonly OpenItem[],
): StrandInput {
  const care = fitted.chain.judged[beginning.start?.version ?? row.base]?.care ?? [];
  const cautioned = row.cautioned || care.length > 0;
  const before = open.map(({ index }) => printed.occurrences[index]);
  const sets = setsFor(context, row, printed, open, before);
  const sessions = open.map(({ at }, index): PlannedSession => {
    const curve = context.programme.curve[at.week - 1] ?? { reserve: 0, share: 1000, easy: false };
    const queued = { occurrence: at.session.occurrence, week: at.week, curve, date: at.day, template: fitted.session };
    const timed = {
      fitted,
      times: NO_TIMES,
      sets: sets[index] ?? 1,
      feeler: false,
      warmUp: false,
      trial: false,
      test: 0,
    };
    return { queued, rows: [timed], minutes: 0, trimmed: [] };
  });
  const testWeeks = open.filter(({ item }) => item.sets.some(({ kind }) => kind === 'test')).map(({ at }) => at.week);
  const floors = floorsOfRow(context, floorsOf(context), cautioned, row.dose);
  const triedBefore = printed.tried === undefined || !printed.trials ? {} : { triedBefore: printed.tried };
  const built = buildStrand(context, { fitted, beginning, sessions, floors, cautioned, testWeeks, ...triedBefore });
  return {
    ...built,
    equation: printed.equation,
    trials: built.trials && printed.trials,
    gain: Math.min(built.gain, printed.gain),
    greatest: built.greatest ?? printed.greatest,
    occurrences: built.occurrences.map((one, index) => {
      const was = before[index];
      const held = one.held ?? was?.held;
      return {
        ...one,
        asked: Math.max(one.asked, was?.asked ?? 0),
        floor: Math.max(one.floor, was?.floor ?? 0),
        ...(held === undefined ? {} : { held }),
      };
    }),
  };
}

const NO_TIMES = { top: 0, bottom: 0, change: 0, only: null, floor: false, rest: 0, rep: 0 };

/** As printed, and fewer in the first weeks after days away. */
function setsFor(
  context: BlockContext,
  { dose }: ReplannedRow,
  printed: StrandInput,
  open: readonly OpenItem[],
  before: readonly (StrandInput['occurrences'][number] | undefined)[],
): readonly number[] {
  const whole = Math.max(...printed.occurrences.map((one) => one.sets));
  const reps = dose.kind === 'every' ? null : { min: printed.bottom, max: printed.top };
  return open.map(({ at }, index) => {
    const planned = before[index]?.sets ?? 1;
    return Math.min(planned, setsOnReturn(context, at.day, [{ whole, planned, reps }]));
  });
}
