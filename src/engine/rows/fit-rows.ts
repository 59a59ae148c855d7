/** Every row of the programme with the version of its exercise that this client begins with. */
import type { Dose } from '../../model/dose.js';
import type { Exercise, Facts } from '../../model/exercise.js';
import { compareIds, type SessionId } from '../../model/identity.js';
import { ofClient, type Problem } from '../../model/problem.js';
import type { Refusal } from '../../model/problems-plan.js';
import type { Block, Row, SessionTemplate } from '../../model/programme.js';
import type { Grams, Range, Tenths } from '../../model/quantity.js';
import type { Result } from '../../model/result.js';
import { type BlockContext, names } from '../block-context.js';
import { isCounted } from '../capacity.js';
import { reserveOf } from '../effort/plan-effort.js';
import { MOST_SUMS } from '../kit/plate-sums.js';
import { secondsOfRep } from '../sessions/seconds-of-rep.js';
import { type Chain, chainVersions, versionOf } from '../versions/chain-versions.js';
import { type Choice, chooseVersion, choosingIn, isOpen } from '../versions/choose-version.js';
import type { Judge, Judged } from '../versions/judge-version.js';
import type { LinksOf } from '../versions/linked-versions.js';
import type { BesideOf } from '../versions/list-beside.js';
import { unlocksOf } from '../versions/list-unlocks.js';
import { doseOfVersion, type Refitted, takesEffort } from './fit-dose.js';
import { fitsAtSignal, repsAtSignal } from './fit-signal.js';
import { leftOf, sparing } from './leave-for-pain.js';
import { dosesFor, type Planned, plannedBy, repsOf, setsOf } from './planned-by.js';

interface Fitted {
  readonly session: SessionTemplate;
  readonly block: Block;
  /** Place of the block in its session, from 0. */
  readonly blockIndex: number;
  readonly row: Row;
  /** The row as the programme has it, its effort included. */
  readonly written: Row;
  /** Done in turn with the rows beside it; a circuit that keeps no limit of circuits is done straight instead. */
  readonly inCircuit: boolean;
  readonly dose: Dose;
  /** What of the row was written for another way of working than the version's. */
  readonly refitted: Refitted;
  /** Sets before any share of a week: signals of `every`, times through of `steps`, rounds. */
  readonly sets: number;
  /** What the programme names; for a pattern what was chosen to fill it. */
  readonly target: Exercise;
  readonly choice: Choice;
  readonly chain: Chain;
}

/** Reps to failure say what it can do. */
export interface WalkFitted extends Fitted {
  readonly planned: 'walk';
  /** The range the walk plans within. */
  readonly reps: Range;
  /** The row's own effort as reserve; `null` where the curve decides. */
  readonly effort: Tenths | null;
  /** Loads up to this part of one maximum, per cent; `null` where the row does not say. */
  readonly percent: number | null;
}

/** It goes up an ordered list of rungs. */
export interface LadderFitted extends Fitted {
  readonly planned: 'ladder';
}

export type FittedRow = WalkFitted | LadderFitted;

export interface Versions {
  readonly judge: Judge;
  readonly linksOf: LinksOf;
  readonly besideOf: BesideOf;
}

/**
 * Rows of work, in the programme's order. Rows with a problem are left out of the value; those of a warm-up or a
 * cool-down of the coach's own are fitted where the session is composed.
 */
export function fitRows(
  context: BlockContext,
  templates: readonly SessionTemplate[],
  versions: Versions,
): Result<readonly FittedRow[]> {
  const fitted: FittedRow[] = [];
  const problems: Problem[] = [];
  for (const session of templates) {
    for (const [blockIndex, block] of session.blocks.entries()) {
      if (block.kind === 'warm-up' || block.kind === 'cool-down') continue;
      for (const row of block.rows) {
        const placed = { session, block, blockIndex, row };
        const left = leftOf(context, row);
        const result = fitRow(
          context,
          placed,
          left === null ? versions : { ...versions, judge: sparing(context, versions.judge, left) },
        );
        // What hurt and has nothing in its place is left out; the coach is told with the pain.
        if (left === null || !result.problems.every(({ code }) => code === 'no-version-allowed')) {
          problems.push(...result.problems);
        }
        if (result.value !== null) fitted.push(result.value);
      }
    }
  }
  return { value: fitted, problems };
}

export type Placed = Pick<FittedRow, 'session' | 'block' | 'blockIndex' | 'row'>;

/**
 * One row, of work or not. Reports `effort-not-readable`, `effort-for-way`, `dose-for-way`, `signal-too-short`,
 * `exercise-not-found`, `kit-too-varied`, `no-version-allowed` and `pattern-not-filled`.
 */
export function fitRow(context: BlockContext, placed: Placed, versions: Versions): Result<FittedRow | null> {
  const found = findTarget(context, placed, versions);
  if (found.value === null) return { value: null, problems: found.problems };
  return fitChoice(context, placed, found.value, versions);
}

/** The row as the version chosen does it. */
export function fitChoice(
  context: BlockContext,
  placed: Placed,
  { target, choice }: Target,
  versions: Versions,
): Result<FittedRow | null> {
  const { session } = placed;
  const { client, rules } = context;
  const head = { severity: 'error', scope: ofClient(client.id), place: placed.row.place } as const;
  const fail = (...problems: readonly Problem[]): Result<null> => ({ value: null, problems });
  if (choice.chosen === null) {
    const { refused } = choice;
    const unlocks = unlocksOf(refused, context);
    const data = { session: session.id, row: placed.row.id, exercise: target.id, refused, unlocks };
    const unsafe = choice.refused.some(({ cause }) => cause === 'avoid' || cause === 'take-care');
    const problem = { ...head, code: 'no-version-allowed', data } as const;
    return fail(unsafe ? { ...problem, unsafe: true } : problem);
  }
  if (choice.chosen.tooMany) return fail({ ...head, code: 'kit-too-varied', data: { most: MOST_SUMS } });
  const { facts, id } = choice.chosen.exercise;
  const gaveWay = choice.chosen.exercise !== target;
  const taken = gaveWay ? doseOfVersion(facts, placed.row.dose, target.facts.way, rules) : placed.row.dose;
  const fits = taken.kind === 'every' ? fitsAtSignal(choice.chosen.exercise, taken, context) : 0;
  const tooMany = taken.kind === 'every' && repsAtSignal(choice.chosen.exercise, taken, context) > fits;
  if (taken.kind === 'every' && tooMany && (!gaveWay || fits === 0)) {
    const { reps: asked, everySeconds } = taken;
    const data = { row: placed.row.id, exercise: id, reps: asked, everySeconds, fits };
    return fail({ ...head, code: 'signal-too-short', data });
  }
  const dose = taken.kind === 'every' && tooMany ? { ...taken, reps: fits } : taken;
  const planned = plannedBy(facts, dose);
  if (planned === null) {
    const data = { row: placed.row.id, exercise: id, way: facts.way, dose: dose.kind, takes: dosesFor(facts) };
    return fail({ ...head, code: 'dose-for-way', data });
  }
  const bodyMass = client.bodyMass?.mass.grams ?? null;
  const fitting = gaveWay ? withoutUnfit(placed.row, target, choice.chosen, planned, bodyMass) : placed.row;
  const row = rested(fitting, dose);
  const problems = effortProblems(row, id, facts, planned, head);
  if (problems.length > 0) return fail(...problems);
  const refitted: Refitted = {
    dose: dose.kind === placed.row.dose.kind ? null : placed.row.dose.kind,
    signal: dose.kind === 'every' && tooMany ? dose.reps : null,
    effort: row.effort === placed.row.effort ? null : (placed.row.effort?.kind ?? null),
  };
  const chain = chainVersions(choice.chosen, bodyMass, versions.judge, versions.linksOf);
  const inCircuit = placed.block.kind === 'circuit';
  const turnAbout = planned === 'walk' && dose.kind === 'every' && facts.sides === 'each';
  const sets = turnAbout ? Math.max(1, Math.floor(setsOf(dose) / 2)) : setsOf(dose);
  const common = { ...placed, row, written: placed.row, inCircuit, dose, refitted, sets, target, choice, chain };
  const reps = planned === 'walk' ? repsOf(dose, secondsOfRep(facts.tempo, 'normal', rules)) : null;
  if (reps === null) return { value: { ...common, planned: 'ladder' }, problems: [] };
  return {
    value: { ...common, planned: 'walk', reps, effort: ownReserve(row), percent: percentOf(row) },
    problems: [],
  };
}

const percentOf = ({ effort }: Row): number | null => (effort?.kind === 'percent' ? effort.percent : null);

const ownReserve = ({ effort }: Row): Tenths | null => (effort === undefined ? null : reserveOf(effort));

/** Work at a signal has its rest between the signals: in plain sets it keeps at least as much. */
function rested(row: Row, dose: Dose): Row {
  if (row.dose.kind !== 'every' || dose.kind === 'every' || row.restSeconds >= row.dose.everySeconds) return row;
  return { ...row, restSeconds: row.dose.everySeconds };
}

/** An effort that fits the exercise as written, but not the version in its place, gives way to the curve. */
function withoutUnfit(row: Row, target: Exercise, chosen: Judged, planned: Planned, bodyMass: Grams | null): Row {
  const { effort, ...rest } = row;
  if (effort === undefined) return row;
  const asWritten = plannedBy(target.facts, row.dose);
  if (asWritten !== null && !takesEffort(target.facts, effort, asWritten)) return row;
  const counted = planned === 'ladder' || isCounted(versionOf(chosen), bodyMass);
  const kept = takesEffort(chosen.exercise.facts, effort, planned) && (effort.kind !== 'percent' || counted);
  return kept ? row : rest;
}

type Head = { readonly severity: 'error'; readonly scope: Problem['scope']; readonly place: Row['place'] };

function effortProblems(
  { id: row, effort }: Row,
  exercise: string,
  facts: Facts,
  planned: Planned,
  head: Head,
): readonly Problem[] {
  if (effort === undefined) return [];
  if (!takesEffort(facts, effort, planned)) {
    return [{ ...head, code: 'effort-for-way', data: { row, exercise, way: facts.way, effort: effort.kind } }];
  }
  if (effort.kind !== 'rpe' || reserveOf(effort) !== null) return [];
  return [{ ...head, code: 'effort-not-readable', data: { row, rpe: effort.tenths / 10 } }];
}

/** What a row asks for, and what is done. */
export interface Target {
  readonly target: Exercise;
  readonly choice: Choice;
}

function findTarget(context: BlockContext, { session, row }: Placed, versions: Versions): Result<Target | null> {
  const head = { severity: 'error', scope: ofClient(context.client.id), place: row.place } as const;
  const { target } = row;
  if (target.kind === 'exercise') {
    const exercise = context.exercises.get(target.id);
    if (exercise === undefined) {
      const data = { exercise: target.id, row: row.id };
      return { value: null, problems: [{ ...head, code: 'exercise-not-found', data }] };
    }
    const choice = chooseVersion(exercise, choosingIn(context, session.id, versions));
    return { value: { target: exercise, choice }, problems: [] };
  }
  const taken = new Set(
    session.blocks.flatMap((block) =>
      block.rows.flatMap((other) => (other.target.kind === 'exercise' ? [context.exercises.get(other.target.id)] : [])),
    ),
  );
  const candidates = [...new Set(context.exercises.values())].filter(
    (exercise) =>
      exercise.facts.pattern === target.pattern &&
      (target.plane === undefined || exercise.facts.plane === target.plane) &&
      plannedBy(exercise.facts, row.dose) !== null &&
      !taken.has(exercise),
  );
  return fillPattern(
    context,
    candidates,
    { session: session.id, row: row.id, pattern: target.pattern },
    versions,
    head,
  );
}

/**
 * What the coach tested latest, then by id, among what is allowed. Marks do not count: a row would change its exercise
 * in the middle of a block for what was done in another.
 */
function fillPattern(
  context: BlockContext,
  candidates: readonly Exercise[],
  data: { readonly session: SessionId; readonly row: string; readonly pattern: string },
  versions: Versions,
  head: Pick<Extract<Problem, { readonly code: 'pattern-not-filled' }>, 'severity' | 'scope' | 'place'>,
): Result<Target | null> {
  const lastTested = (exercise: Exercise): number =>
    Math.max(
      -1,
      ...context.client.tests
        .filter(
          ({ exercise: of, date, marked }) => marked !== true && date <= context.today && names(context, of, exercise),
        )
        .map(({ date }) => date),
    );
  const choosing = choosingIn(context, data.session, versions);
  const open = candidates
    .filter((exercise) => isOpen(versions.judge(exercise), choosing))
    .sort((a, b) => lastTested(b) - lastTested(a) || compareIds(a.id, b.id));
  const target = open[0];
  if (target === undefined) {
    const refused = candidates.flatMap((exercise): readonly Refusal[] => versions.judge(exercise).refusals);
    return {
      value: null,
      problems: [
        { ...head, code: 'pattern-not-filled', data: { ...data, refused, unlocks: unlocksOf(refused, context) } },
      ],
    };
  }
  return { value: { target, choice: chooseVersion(target, choosing) }, problems: [] };
}
