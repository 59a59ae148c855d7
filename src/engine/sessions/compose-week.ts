/** The weeks of the plan: sessions, groups and items, in the order done. */
import { isoOfDay } from '../../model/day.js';
import type { Group, Item, PlanSession, Week } from '../../model/plan.js';
import type { Reason } from '../../model/reason.js';
import type { BlockContext } from '../block-context.js';
import type { FittedRow } from '../rows/fit-rows.js';
import type { Around, AroundOf } from './compose-around.js';
import type { TimedRow } from './count-seconds.js';
import { planDrill } from './plan-drill.js';
import type { MeasuresOf, PlannedSession } from './plan-sets.js';
import type { Queue, QueuedSession } from './queue-sessions.js';
import { type DoneRow, shortenSession } from './shorten-session.js';

/** What weeks are composed of. */
export interface WeekParts {
  readonly sessions: readonly PlannedSession[];
  /** `null` where a row has nothing planned. */
  readonly itemOf: (session: PlannedSession, row: TimedRow) => Item | null;
  readonly aroundOf: AroundOf;
  readonly measuresOf: MeasuresOf;
  /** Why rows stand where they do. */
  readonly reasonsOf: (fitted: FittedRow) => readonly Reason[];
}

/** A week that a break or an early end leaves without a session stays, empty. */
export function composeWeeks(context: BlockContext, queue: Queue, parts: WeekParts): readonly Week[] {
  return queue.begins.map((begins, index): Week => {
    const number = index + 1;
    const own = parts.sessions.filter(({ queued }) => queued.week === number);
    const deload = context.programme.curve[index]?.easy ?? false;
    const sessions = own.map((session) => composeSession(context, session, parts));
    return { number, begins: isoOfDay(begins), deload, sessions };
  });
}

function composeSession(context: BlockContext, session: PlannedSession, parts: WeekParts): PlanSession {
  const { queued, minutes, trimmed } = session;
  const done = session.rows.flatMap((timed): readonly DoneRow[] => {
    const item = timed.sets > 0 ? parts.itemOf(session, timed) : null;
    if (item === null) return [];
    const more = parts.reasonsOf(timed.fitted);
    return [{ timed, item: more.length === 0 ? item : { ...item, reasons: [...item.reasons, ...more] } }];
  });
  const { warmUp, coolDown } = parts.aroundOf(
    queued.template,
    session.rows.filter(({ sets }) => sets > 0).map(({ fitted }) => fitted),
  );
  const before = aroundGroup(context, queued, warmUp);
  const measures = parts.measuresOf(queued.occurrence);
  const after = aroundGroup(context, queued, coolDown);
  return {
    id: queued.template.id,
    name: queued.template.name,
    date: isoOfDay(queued.date),
    occurrence: queued.occurrence,
    minutes,
    trimmed,
    groups: [
      before,
      ...(measures === null ? [] : [measures]),
      ...workGroups(done),
      ...(coolDown.minutes > 0 ? [after] : []),
    ],
    short: shortenSession(context, warmUp, before.items, done),
  };
}

function aroundGroup(context: BlockContext, queued: QueuedSession, around: Around): Group {
  const { kind, name, rounds, minutes, drills } = around;
  const items = drills.map((drill) => planDrill(context, queued, around, drill));
  return { kind, name, rounds, minutes, items };
}

/**
 * A group for each block; rows of a straight block that go by a signal, or by work and pause, stand with those alone
 * that share it.
 */
function workGroups(done: readonly DoneRow[]): readonly Group[] {
  const groups: { readonly block: number; readonly beat: Beat; readonly rows: DoneRow[] }[] = [];
  for (const row of done) {
    const { blockIndex: block, inCircuit } = row.timed.fitted;
    const beat = inCircuit ? NO_BEAT : ownBeat(row);
    const last = groups.at(-1);
    if (last?.block === block && isSameBeat(last.beat, beat)) last.rows.push(row);
    else groups.push({ block, beat, rows: [row] });
  }
  return groups.map(({ beat, rows }): Group => {
    const circuit = rows.some(({ timed }) => timed.fitted.inCircuit);
    return {
      kind: circuit ? 'circuit' : 'straight',
      name: rows[0]?.timed.fitted.block.name ?? '',
      rounds: circuit ? Math.max(...rows.map(({ timed }) => timed.sets)) : 1,
      ...(circuit ? sharedBeat(rows) : beat),
      items: rows.map(({ item }) => item),
    };
  });
}

type Beat = Pick<Group, 'everySeconds' | 'workSeconds' | 'pauseSeconds'>;

const NO_BEAT: Beat = {};

const isSameBeat = (a: Beat, b: Beat): boolean =>
  a.everySeconds === b.everySeconds && a.workSeconds === b.workSeconds && a.pauseSeconds === b.pauseSeconds;

/** The signal, or the work and the pause, that all of them share. */
function sharedBeat(rows: readonly DoneRow[]): Beat {
  const [first = NO_BEAT, ...others] = rows.map(ownBeat);
  return others.every((beat) => isSameBeat(beat, first)) ? first : NO_BEAT;
}

/** Straight, only breath goes by work and pause. */
function ownBeat({ timed, item }: DoneRow): Beat {
  const { dose, inCircuit } = timed.fitted;
  if (dose.kind === 'every') return { everySeconds: dose.everySeconds };
  if (dose.kind !== 'timed' || !(inCircuit || item.way === 'conditioning')) return {};
  const seconds = new Set(item.sets.filter(({ kind }) => kind === 'work').map((set) => set.seconds));
  const [work] = seconds;
  return seconds.size === 1 && work !== undefined ? { workSeconds: work, pauseSeconds: item.restSeconds } : {};
}
