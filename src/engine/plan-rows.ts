/** Every row of the block: fitted, its sets and minutes, and its weeks, walked or up a ladder. */
import type { Item } from '../model/plan.js';
import type { Problem } from '../model/problem.js';
import { invariant, type Result } from '../model/result.js';
import type { BlockContext } from './block-context.js';
import { floorsOf } from './effort/plan-effort.js';
import { easierSeen } from './history/seen/easier-seen.js';
import { type ItemsOfRow, itemsOfWalk } from './items/plan-item.js';
import { planMeasures } from './items/plan-measures.js';
import { type PlannedTests, planTests, testsOf } from './items/test-sets.js';
import { testedApart } from './items/tested-apart.js';
import { itemsOfLadder } from './ladder/ladder-item.js';
import { type LadderRow, planLadderRow } from './ladder/ladder-row.js';
import { beginLighter } from './rows/begin-lighter.js';
import { beginRow } from './rows/begin-row.js';
import { beginTested } from './rows/begin-tested.js';
import type { Beginning } from './rows/beginning.js';
import { allowsTrials } from './rows/build-strand.js';
import { caresAtStart } from './rows/cares-met.js';
import { type FittedRow, fitRows, type Versions } from './rows/fit-rows.js';
import { leaveOutRepeats } from './rows/leave-out.js';
import { keepsOwnBell } from './rows/own-bell.js';
import { type WalkedRow, walkRow } from './rows/walked-row.js';
import { type AroundOf, planAround } from './sessions/compose-around.js';
import type { TimedRow } from './sessions/count-seconds.js';
import { type MeasuresOf, type PlannedSession, planSets, type RowNeeds } from './sessions/plan-sets.js';
import type { Queue } from './sessions/queue-sessions.js';
import { type RowTimes, timeRow } from './sessions/seconds-of-set.js';
import { type Shape, shapeSessions } from './sessions/shape-sessions.js';

export interface PlannedRows {
  readonly sessions: readonly PlannedSession[];
  readonly shape: Shape;
  readonly aroundOf: AroundOf;
  readonly measuresOf: MeasuresOf;
  readonly tests: PlannedTests;
  /** In the order done. */
  readonly walked: ReadonlyMap<FittedRow, WalkedRow>;
  readonly ladders: ReadonlyMap<FittedRow, LadderRow>;
}

/**
 * Reports what any of its rows does. Where what was seen would be answered by easier versions that the session has no
 * time for, the rows keep theirs: what a coach saw never keeps a client from training.
 */
export function planRows(context: BlockContext, queue: Queue, versions: Versions): Result<PlannedRows> {
  const fitted = fitRows(context, queue.templates, versions);
  const eased = easierSeen(context, fitted.value, versions);
  const planned = planFitted(context, queue, versions, { ...fitted, value: eased });
  if (eased === fitted.value || !hasErrors(planned)) return planned;
  const asFitted = planFitted(context, queue, versions, fitted);
  return hasErrors(asFitted) ? planned : asFitted;
}

const hasErrors = ({ problems }: Result<PlannedRows>): boolean => problems.some(({ severity }) => severity === 'error');

function planFitted(
  context: BlockContext,
  queue: Queue,
  versions: Versions,
  fitted: Result<readonly FittedRow[]>,
): Result<PlannedRows> {
  const begun = fitted.value.map((row) => beginLighter(context, beginTested(context, row, versions), versions));
  const kept = leaveOutRepeats(context, begun);
  const shaped = shapeSessions(context, kept.rows);
  const shape = { ...shaped, findings: [...kept.findings, ...shaped.findings] };
  const tests = planTests(context, shape.rows);
  const due = testsOf(context, versions.judge, tests);
  const measures = new Map(due.sessions.map((place) => [place, planMeasures(context, due, place, versions)]));
  const measuresOf: MeasuresOf = (occurrence) => measures.get(occurrence) ?? null;
  const around = planAround(context, queue.templates, versions);
  const beginnings = new Map<FittedRow, Beginning>();
  for (const row of shape.rows) if (row.planned === 'walk') beginnings.set(row, beginRow(context, row, versions));
  const warmed = warmUpRows(shape.rows);
  const needs = new Map<FittedRow, RowNeeds>(
    shape.rows.map((row) => {
      const beginning = beginnings.get(row);
      const feeler = beginning?.how === 'feeler';
      const trials = allowsTrials(context, row) && caresAtStart(row).length === 0 && !feeler && mayRise(row);
      const times = timesOf(context, row, beginning);
      const test = (tests.get(row)?.occurrences ?? []).length > 0 ? due.over * times.rep : 0;
      return [row, { feeler, warmUp: warmed.has(row) && !feeler, trials, times, test }];
    }),
  );
  const sets = planSets(context, queue, shape.rows, needs, around.value, measuresOf);
  const floors = floorsOf(context);
  const problems: Problem[] = [...fitted.problems, ...around.problems, ...sets.problems];
  const walked = new Map<FittedRow, WalkedRow>();
  const ladders = new Map<FittedRow, LadderRow>();
  for (const row of shape.rows) {
    if (row.planned === 'ladder') {
      const ladder = planLadderRow(context, row, sets.value, versions);
      problems.push(...ladder.problems);
      if (ladder.value !== null) ladders.set(row, ladder.value);
      continue;
    }
    const beginning = beginnings.get(row);
    invariant(beginning !== undefined, 'every walked row begins somewhere');
    const one = walkRow(context, row, beginning, sets.value, floors, tests.get(row)?.weeks ?? [], versions);
    problems.push(...one.problems);
    if (one.value !== null) walked.set(row, one.value);
  }
  return {
    value: { sessions: sets.value, shape, aroundOf: around.value, measuresOf, tests, walked, ladders },
    problems,
  };
}

/** The item of a row in one session, walked or of a ladder; `null` where the row has nothing planned. */
export function planItems(
  context: BlockContext,
  { tests, walked, ladders }: PlannedRows,
  versions: Versions,
): (session: PlannedSession, timed: TimedRow) => Item | null {
  const items = new Map<FittedRow, readonly [readonly PlannedSession[], ItemsOfRow]>();
  const testedOf = testedApart(context, tests, walked);
  for (const [fitted, one] of walked) {
    items.set(fitted, [one.sessions, itemsOfWalk(context, one, testedOf(fitted), versions)]);
  }
  for (const [fitted, one] of ladders) items.set(fitted, [one.sessions, itemsOfLadder(context, one, versions)]);
  return (session, { fitted, warmUp }) => {
    const [sessions, itemAt] = items.get(fitted) ?? [];
    return sessions === undefined || itemAt === undefined ? null : itemAt(sessions.indexOf(session), warmUp);
  };
}

/** Where the stronger side keeps its own bell, each set may need a change of bell there and back. */
function timesOf(context: BlockContext, fitted: FittedRow, beginning: Beginning | undefined): RowTimes {
  const times = timeRow(fitted, context);
  if (fitted.planned !== 'walk' || beginning === undefined) return times;
  return keepsOwnBell(context, fitted, beginning) ? { ...times, top: times.top + 2 * times.change } : times;
}

const mayRise = ({ chain }: FittedRow): boolean =>
  chain.versions.length > 1 || chain.versions.some(({ loads }) => loads.length > 1);

/** The first loaded row of each movement pattern in a session, outside circuits: a lighter set goes before it. */
function warmUpRows(rows: readonly FittedRow[]): ReadonlySet<FittedRow> {
  const seen = new Set<string>();
  return new Set(
    rows.filter((row) => {
      if (row.planned === 'ladder') return false;
      const key = `${row.session.id}/${row.chain.judged[row.chain.base]?.exercise.facts.pattern}`;
      if (row.inCircuit || seen.has(key)) return false;
      if (!row.chain.versions.some(({ loads }) => loads.filter(({ grams }) => grams > 0).length > 1)) return false;
      seen.add(key);
      return true;
    }),
  );
}
