/**
 * How many sets of each row in each session of the queue: the programme's shares first, then the minutes there are.
 * Nothing later makes a session longer.
 */
import { placeOfFact } from '../../model/client.js';
import type { RowId } from '../../model/identity.js';
import type { Group, Trim } from '../../model/plan.js';
import { ofClient, type Problem } from '../../model/problem.js';
import type { SessionTemplate } from '../../model/programme.js';
import type { PerMille, Seconds } from '../../model/quantity.js';
import { invariant, type Result } from '../../model/result.js';
import type { BlockContext } from '../block-context.js';
import { restOnReturn, setsOnReturn } from '../breaks/returns.js';
import { reasonOf } from '../reason-of.js';
import type { FittedRow } from '../rows/fit-rows.js';
import type { Rulebook } from '../rulebook.js';
import { BETWEEN_EXERCISES } from '../rules/between-exercises.js';
import { EASY_WEEK_SETS } from '../rules/easy-week-sets.js';
import { MINUTES_CAP } from '../rules/minutes-cap.js';
import type { AroundOf } from './compose-around.js';
import { minutesOf, secondsOfRows, type TimedRow } from './count-seconds.js';
import type { Queue, QueuedSession } from './queue-sessions.js';
import type { RowTimes } from './seconds-of-set.js';
import { trimSets } from './trim-sets.js';

/** One session of the queue with its rows' sets; rows cut for time have none and are left out. */
export interface PlannedSession {
  readonly queued: QueuedSession;
  readonly rows: readonly TimedRow[];
  readonly minutes: number;
  readonly trimmed: readonly Trim[];
}

/** Those in which a row is done. */
export function sessionsOf(all: readonly PlannedSession[], fitted: FittedRow): readonly PlannedSession[] {
  return all.filter(
    ({ queued, rows }) =>
      queued.template === fitted.session && rows.some((timed) => timed.fitted === fitted && timed.sets > 0),
  );
}

/** What a row needs besides its sets, known before the walk. */
export interface RowNeeds {
  readonly feeler: boolean;
  readonly warmUp: boolean;
  readonly trials: boolean;
  readonly times: RowTimes;
  /** How long its test takes, where it is tested: in the first session it stands in, and in the last. */
  readonly test: Seconds;
}

export type Needs = ReadonlyMap<FittedRow, RowNeeds>;

/** What sets are planned with. */
interface Plan {
  readonly context: BlockContext;
  readonly needs: Needs;
  /** Of a begun block: they only say how many sets there were before. */
  readonly done: ReadonlySet<QueuedSession>;
  /** The sets they asked for, by `occurrence/row`. */
  readonly worked: Queue['worked'];
  readonly minutesOf: Clock;
}

/** Whole minutes of a session with these rows. */
type Clock = (session: QueuedSession, rows: readonly TimedRow[]) => number;

/** What comes before and after the work counts with it, for the rows that are done; and the measures due that day. */
function clockOf({ rules }: BlockContext, aroundOf: AroundOf, measuresOf: MeasuresOf): Clock {
  return ({ template, occurrence }, rows) => {
    const done = rows.filter(({ sets }) => sets > 0).map(({ fitted }) => fitted);
    const { warmUp, coolDown } = aroundOf(template, done);
    const measures = secondsOfMeasures(measuresOf(occurrence), rules);
    return minutesOf(60 * (warmUp.minutes + coolDown.minutes) + measures + secondsOfRows(rows, rules), rules);
  };
}

/** The group of published measures due in a session, by its place in the queue. */
export type MeasuresOf = (occurrence: number) => Group | null;

function secondsOfMeasures(group: Group | null, rules: Rulebook): Seconds {
  return (group?.items ?? []).reduce((sum, { sets, restSeconds }) => {
    const work = sets.reduce((all, { seconds = 0 }) => all + seconds, 0);
    return sum + work + restSeconds + rules.valueOf(BETWEEN_EXERCISES);
  }, 0);
}

function neededBy(fitted: FittedRow, needs: Needs): RowNeeds {
  const needed = needs.get(fitted);
  invariant(needed !== undefined, 'what every row needs is known before its sets');
  return needed;
}

/** `max(1, round half up(sets × share))`. */
const shareOfSets = (sets: number, share: PerMille): number => Math.max(1, Math.floor((sets * share + 500) / 1000));

/**
 * Sets for every session, trimmed to the client's minutes in the programme's order of priority: rows it cuts first,
 * in its order; then optional rows, the last first; then one set at a time, from the session's last row upwards. A
 * row is cut for the whole block, since a session keeps its shape; sets are cut week by week. Never cut: what the
 * programme never cuts, the warm-up, and the only work there is for a movement pattern.
 *
 * Reports `session-too-long` for the first week of a session that does not fit.
 */
export function planSets(
  context: BlockContext,
  queue: Queue,
  rows: readonly FittedRow[],
  needs: Needs,
  aroundOf: AroundOf,
  measuresOf: MeasuresOf,
): Result<readonly PlannedSession[]> {
  const minutes = clockOf(context, aroundOf, measuresOf);
  const plan: Plan = { context, needs, done: new Set(queue.done), worked: queue.worked, minutesOf: minutes };
  const cut = new Set<FittedRow>();
  const planned = new Map<number, PlannedSession>();
  const problems: Problem[] = [];
  for (const template of queue.templates) {
    const own = rows.filter((fitted) => fitted.session === template);
    const sessions = [...queue.done, ...queue.sessions]
      .filter((queued) => queued.template === template)
      .sort((a, b) => a.occurrence - b.occurrence);
    const coming = (all: readonly PlannedSession[]) => all.filter(({ queued }) => !queue.done.includes(queued));
    const left = () => own.filter((row) => !cut.has(row));
    let fitting = untrimmed(sessions, own, plan);
    const wasCut = ({ session, row }: FittedRow) => queue.cut.has(`${session.id}/${row.id}`);
    for (const fitted of cutOrder(context, own)) {
      // A session keeps its shape to the end of the block.
      if (fitIn(coming(fitting), context) && !wasCut(fitted)) continue;
      if (isOnlyWork(fitted, rows, cut)) continue;
      cut.add(fitted);
      fitting = untrimmed(sessions, left(), plan);
    }
    const gone = own.filter((row) => cut.has(row));
    if (gone.length > 0 || !fitIn(coming(fitting), context)) fitting = fitSessions(sessions, left(), gone, plan);
    for (const session of coming(fitting)) planned.set(session.queued.occurrence, session);
    const long = coming(fitting).find((session) => session.minutes > context.client.minutes);
    if (long !== undefined) problems.push(tooLong(long, template, context));
  }
  return { value: [...planned.values()].sort((a, b) => a.queued.occurrence - b.queued.occurrence), problems };
}

const fitIn = (sessions: readonly PlannedSession[], { client }: BlockContext): boolean =>
  sessions.every(({ minutes }) => minutes <= client.minutes);

function tooLong(session: PlannedSession, template: SessionTemplate, context: BlockContext): Problem {
  const { client, programme } = context;
  const own = new Set<string>(session.rows.map(({ fitted }) => fitted.row.id));
  const data = {
    session: template.id,
    week: session.queued.week,
    minutes: session.minutes,
    cap: client.minutes,
    neverCut: programme.neverCut.filter((row) => own.has(row)),
  };
  return {
    code: 'session-too-long',
    severity: 'error',
    scope: ofClient(client.id),
    place: placeOfFact(client, 'minutes'),
    data,
  };
}

function cutOrder({ programme }: BlockContext, own: readonly FittedRow[]): readonly FittedRow[] {
  const never = new Set<RowId>(programme.neverCut);
  const mayGo = own.filter((fitted) => !never.has(fitted.row.id));
  const first = programme.cutFirst.flatMap((id) => mayGo.filter((fitted) => fitted.row.id === id));
  const optional = mayGo.filter((fitted) => fitted.row.optional && !first.includes(fitted)).reverse();
  return [...first, ...optional];
}

const patternOf = ({ chain, target }: FittedRow) =>
  chain.judged[chain.base]?.exercise.facts.pattern ?? target.facts.pattern;

function isOnlyWork(fitted: FittedRow, rows: readonly FittedRow[], cut: ReadonlySet<FittedRow>): boolean {
  return !rows.some((other) => other !== fitted && !cut.has(other) && patternOf(other) === patternOf(fitted));
}

/** Sets by share, the easy week against the last work week, one `k` for the rows of a circuit. */
function untrimmed(
  sessions: readonly QueuedSession[],
  rows: readonly FittedRow[],
  plan: Plan,
): readonly PlannedSession[] {
  const planned: PlannedSession[] = [];
  for (const queued of sessions) {
    const timed = timedRows(queued, rows, lastWork(planned), endsOf(queued, sessions, plan), plan);
    planned.push({ queued, rows: timed, minutes: plan.minutesOf(queued, timed), trimmed: [] });
  }
  return planned;
}

function lastWork(planned: readonly PlannedSession[]): PlannedSession | undefined {
  return planned.filter((session) => !session.queued.curve.easy).at(-1);
}

interface Ends {
  /** The first time that a session still comes up: what is not known then is felt for. */
  readonly next: boolean;
  /** The first or the last time of the whole block: rows are tested then. */
  readonly tested: boolean;
}

const endsOf = (queued: QueuedSession, sessions: readonly QueuedSession[], { done }: Plan): Ends => ({
  next: sessions.find((session) => !done.has(session)) === queued,
  tested: sessions[0] === queued || sessions.at(-1) === queued,
});

function timedRows(
  queued: QueuedSession,
  rows: readonly FittedRow[],
  before: PlannedSession | undefined,
  { next, tested }: Ends,
  { context, needs, worked }: Plan,
): readonly TimedRow[] {
  const { share, easy } = queued.curve;
  const asked = rows.map((fitted) => {
    const whole = setsAskedFor(fitted);
    const last = easy ? before?.rows.find((row) => row.fitted === fitted)?.sets : undefined;
    const most = last === undefined ? whole : Math.max(1, last - context.rules.valueOf(EASY_WEEK_SETS));
    const planned = last === undefined ? shareOfSets(whole, share) : Math.min(shareOfSets(whole, share), most);
    return { fitted, whole, planned, reps: fitted.planned === 'walk' ? fitted.reps : null };
  });
  return asked.map((one) => {
    const { fitted } = one;
    const { feeler, warmUp, trials, times, test } = neededBy(fitted, needs);
    // The rows of a circuit keep the number of rounds they share.
    const together = fitted.inCircuit
      ? asked.filter((row) => row.fitted.block === fitted.block && row.planned === one.planned)
      : [one];
    const asWorked = IN_SETS.has(fitted.dose.kind) ? worked.get(`${queued.occurrence}/${fitted.row.id}`) : undefined;
    const sets = asWorked ?? setsOnReturn(context, queued.date, together);
    const way = fitted.chain.judged[fitted.chain.base]?.exercise.facts.way ?? fitted.target.facts.way;
    const rest = restOnReturn(context, queued.date, way, fitted.dose, times.rest);
    return {
      fitted,
      times: rest === times.rest ? times : { ...times, rest },
      sets,
      feeler: feeler && next,
      warmUp,
      trial: trials && !easy && sets >= 2,
      test: tested ? test : 0,
    };
  });
}

/** Doses whose sets are told one by one in an item, and not by signals or times through. */
const IN_SETS: ReadonlySet<FittedRow['dose']['kind']> = new Set(['sets', 'timed', 'distance', 'rounds']);

function setsAskedFor({ block, sets }: FittedRow): number {
  return block.kind === 'circuit' ? (block.rounds ?? sets) : sets;
}

function fitSessions(
  sessions: readonly QueuedSession[],
  rows: readonly FittedRow[],
  gone: readonly FittedRow[],
  plan: Plan,
): readonly PlannedSession[] {
  const { context } = plan;
  const planned: PlannedSession[] = [];
  for (const queued of sessions) {
    const ends = endsOf(queued, sessions, plan);
    const timed = timedRows(queued, rows, lastWork(planned), ends, plan);
    const kept = trimSets(timed, context, (left) => plan.minutesOf(queued, left));
    const cuts = [
      ...gone.map((fitted): Cut => ({ fitted, what: 'row', sets: setsAskedFor(fitted) })),
      ...timed.flatMap(({ fitted, sets }, i): readonly Cut[] => {
        const fewer = sets - (kept[i]?.sets ?? sets);
        return fewer > 0 ? [{ fitted, what: 'sets', sets: fewer }] : [];
      }),
    ];
    const trimmed = cuts.length === 0 ? [] : trimsOf(cuts, queued, [...rows, ...gone], ends, plan);
    planned.push({ queued, rows: kept, minutes: plan.minutesOf(queued, kept), trimmed });
  }
  return planned;
}

interface Cut {
  readonly fitted: FittedRow;
  readonly what: Trim['what'];
  readonly sets: number;
}

/** Each told with how long the session would be with all its rows and sets. */
function trimsOf(
  cuts: readonly Cut[],
  queued: QueuedSession,
  rows: readonly FittedRow[],
  ends: Ends,
  plan: Plan,
): readonly Trim[] {
  const minutes = plan.minutesOf(queued, timedRows(queued, rows, undefined, ends, plan));
  return cuts.map((cut) => trimOf(cut, minutes, plan.context));
}

function trimOf({ fitted, what, sets }: Cut, minutes: number, { client }: BlockContext): Trim {
  const reason = reasonOf(MINUTES_CAP, 'coach', [
    { name: 'row', value: fitted.row.id, unit: '' },
    { name: 'minutes', value: minutes, unit: 'minutes' },
    { name: 'cap', value: client.minutes, unit: 'minutes' },
    { name: 'sets', value: sets, unit: 'sets' },
  ]);
  return { row: fitted.row.id, what, sets, reason };
}
