/** One row that goes up a ladder, with everything decided about it: where it begins, its rungs, and the way up them. */
import type { LadderInput, LadderOccurrence } from '../../model/ladder.js';
import { ofClient, type Problem } from '../../model/problem.js';
import type { Seconds } from '../../model/quantity.js';
import type { ReasonInput, Rule } from '../../model/reason.js';
import type { Result } from '../../model/result.js';
import type { BlockContext } from '../block-context.js';
import { returnOf } from '../breaks/returns.js';
import type { LastRung, Recall } from '../history/recall.js';
import { caresAtStart } from '../rows/cares-met.js';
import type { LadderFitted, Versions } from '../rows/fit-rows.js';
import { heldOf, recallOf } from '../rows/from-marks.js';
import { EASIER_IN_KIT } from '../rules/easier-in-kit.js';
import { HOLD_MOST } from '../rules/hold-most.js';
import { ladderEarned } from '../rules/ladder-earned.js';
import { ladderEasyDown } from '../rules/ladder-easy-down.js';
import { LADDER_START_LIGHTEST } from '../rules/ladder-start-lightest.js';
import { ladderWeeks } from '../rules/ladder-weeks.js';
import { NEXT_UP_PASSED } from '../rules/next-up-passed.js';
import { type PlannedSession, sessionsOf } from '../sessions/plan-sets.js';
import type { Judged } from '../versions/judge-version.js';
import { unlocksOf } from '../versions/list-unlocks.js';
import { buildRungs } from './build-rungs.js';
import type { LadderFinding, LadderResult } from './ladder-step.js';
import { rungReason } from './ladder-why.js';
import { planLadder } from './plan-ladder.js';
import { rungToBegin } from './rung-to-begin.js';
import { type LadderStart, startLadder } from './start-ladder.js';

export interface LadderRow {
  readonly fitted: LadderFitted;
  readonly ladder: LadderInput;
  readonly result: LadderResult;
  readonly began: LadderStart;
  /** The version it begins with, where it meets a caution to take care: then no new stage is offered. */
  readonly cares: readonly Judged[];
  /** The sessions it stands in, one for each occurrence of the ladder. */
  readonly sessions: readonly PlannedSession[];
  readonly findings: readonly LadderFinding[];
}

/** Reports `no-easier-version`; `null` then, and where the row was cut for time. */
export function planLadderRow(
  context: BlockContext,
  fitted: LadderFitted,
  all: readonly PlannedSession[],
  versions: Versions,
): Result<LadderRow | null> {
  const { chain, session, row } = fitted;
  const judged = chain.judged[chain.base];
  const sessions = sessionsOf(all, fitted);
  if (judged === undefined || sessions.length === 0) return { value: null, problems: [] };
  const cares = caresAtStart(fitted);
  const began = startLadder(context, fitted, judged);
  const { rungs, start: first } = buildRungs(fitted, began, context.rules);
  const { start, earned } = rungToBegin(rungs, first, began.last);
  const hold = heldOf(context, fitted);
  const recall = recallOf(context, judged);
  const { moderate, steady } = context.standing;
  const ladder: LadderInput = {
    id: `${session.id}/${row.id}`,
    session: session.id,
    row: row.id,
    way: judged.exercise.facts.way,
    rungs,
    start,
    earned: began.last !== null && isLower(began.last) ? 0 : mostOf(earned, recall.lighter > 0 ? 0 : recall.earned),
    gates: cares.length === 0 && !moderate && !steady,
    occurrences: sessions.map((planned) => occurrenceOf(context, fitted, planned, hold)),
    rules: {
      earned: context.rules.valueOf(ladderEarned.row),
      weeks: context.rules.valueOf(ladderWeeks.row),
      easyDown: context.rules.valueOf(ladderEasyDown.row),
    },
  };
  const problems = easierMissing(context, fitted, ladder, versions);
  if (problems.length > 0) return { value: null, problems };
  const result = planLadder(ladder);
  const longest = context.rules.valueOf(HOLD_MOST);
  const findings = [...result.findings, ...startFindings(ladder, began, fitted, longest)];
  return { value: { fitted, ladder, result, began, cares, sessions, findings }, problems: [] };
}

const isLower = ({ lighter, lower }: LastRung): boolean => lighter > 0 || lower > 0;
const mostOf = (a: 0 | 1 | 2, b: 0 | 1 | 2): 0 | 1 | 2 => (a >= b ? a : b);

function occurrenceOf(
  context: BlockContext,
  fitted: LadderFitted,
  { queued, rows }: PlannedSession,
  hold: Recall['hold'],
): LadderOccurrence {
  const sets = rows.find((timed) => timed.fitted === fitted)?.sets ?? 1;
  const held = returnOf(context, queued.date)?.held ?? (hold !== null && queued.date <= hold.until ? hold : null);
  const occurrence = { week: queued.week, easy: queued.curve.easy, sets };
  return held === null ? occurrence : { ...occurrence, held: { why: held.why } };
}

/** What the coach is told of where it begins. */
function startFindings(
  ladder: LadderInput,
  began: LadderStart,
  { dose }: LadderFitted,
  longest: Seconds,
): readonly LadderFinding[] {
  const weeks = ladder.occurrences.slice(0, 1).map(({ week }) => week);
  const told = (rule: Rule, more: readonly ReasonInput[] = []): LadderFinding => {
    return { rule: rule.id, weeks, reason: rungReason(rule, 'coach', ladder, ladder.start, more) };
  };
  const tooLong =
    ladder.way === 'hold' && dose.kind === 'timed' && dose.seconds.max > longest ? dose.seconds.max : null;
  const alone = dose.kind === 'main-next' && ladder.rungs[ladder.start]?.nextUp === null && !isFromStop(ladder);
  return [
    ...(began.rule === LADDER_START_LIGHTEST ? [told(LADDER_START_LIGHTEST)] : []),
    ...(alone ? [told(NEXT_UP_PASSED)] : []),
    ...(tooLong === null ? [] : [told(HOLD_MOST, [{ name: 'written', value: tooLong, unit: 's' }])]),
  ];
}

const isFromStop = ({ rungs, start }: LadderInput): boolean => rungs[start]?.deadStop ?? false;

/** Every version the ladder may reach in one edition needs an easier one below it: promised to whoever trains alone. */
function easierMissing(
  context: BlockContext,
  { chain, session, row }: LadderFitted,
  { rungs, gates }: LadderInput,
  { besideOf }: Versions,
): readonly Problem[] {
  const reached = new Set(rungs.filter(({ stage }) => stage <= (gates ? 1 : 0)).map(({ exercise }) => exercise));
  return chain.judged.flatMap((judged): readonly Problem[] => {
    const { exercise } = judged;
    if (!reached.has(exercise.id)) return [];
    const { ways, easier, refused } = besideOf(judged);
    if (ways.length + easier.length >= context.rules.valueOf(EASIER_IN_KIT)) return [];
    const unlocks = unlocksOf(refused, context);
    const data = { session: session.id, row: row.id, exercise: exercise.id, refused, unlocks };
    const head = { severity: 'error', scope: ofClient(context.client.id), place: row.place } as const;
    return [{ ...head, code: 'no-easier-version', data }];
  });
}
