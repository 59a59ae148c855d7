/** The weeks of the plan: sessions, groups and items, in the order done. */
import { isoOfDay } from '../../model/day.js';
import type { Group, Item, PlanSession, Week } from '../../model/plan.js';
import type { Reason } from '../../model/reason.js';
import type { BlockContext } from '../block-context.js';
import type { FittedRow, Versions } from '../rows/fit-rows.js';
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
  readonly versions: Versions;
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
    return [{ timed, item: { ...item, reasons: [...item.reasons, ...parts.reasonsOf(timed.fitted)] } }];
  });
  const { warmUp, coolDown } = parts.aroundOf(
    queued.template,
    session.rows.filter(({ sets }) => sets > 0).map(({ fitted }) => fitted),
  );
  const before = aroundGroup(context, queued, warmUp, parts);
  const measures = parts.measuresOf(queued.occurrence);
  const after = aroundGroup(context, queued, coolDown, parts);
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

function aroundGroup(context: BlockContext, queued: QueuedSession, around: Around, { versions }: WeekParts): Group {
  const { kind, name, rounds, minutes, drills } = around;
  const items = drills.map((drill) => planDrill(context, queued, around, drill, versions));
  return { kind, name, rounds, minutes, items };
}

/**
 * A group for each block; rows of a straight block that go by a signal, or by work and pause, stand with those alone
 * that share it.
 */
function workGroups(done: readonly DoneRow[]): readonly Group[] {
  const groups: { readonly key: string; readonly rows: DoneRow[] }[] = [];
  for (const row of done) {
    const { blockIndex, inCircuit } = row.timed.fitted;
    const beat = inCircuit ? {} : beatOf([row]);
    const key = `${blockIndex} ${JSON.stringify(beat)}`;
    const last = groups.at(-1);
    if (last?.key === key) last.rows.push(row);
    else groups.push({ key, rows: [row] });
  }
  return groups.map(({ rows }): Group => {
    const circuit = rows.some(({ timed }) => timed.fitted.inCircuit);
    return {
      kind: circuit ? 'circuit' : 'straight',
      name: rows[0]?.timed.fitted.block.name ?? '',
      rounds: circuit ? Math.max(...rows.map(({ timed }) => timed.sets)) : 1,
      ...beatOf(rows),
      items: rows.map(({ item }) => item),
    };
  });
}

type Beat = Pick<Group, 'everySeconds' | 'workSeconds' | 'pauseSeconds'>;

/** The signal, or the work and the pause, that all of them share; straight, only breath goes by work and pause. */
function beatOf(rows: readonly DoneRow[]): Beat {
  const beats = new Set(rows.map((row) => JSON.stringify(ownBeat(row))));
  const [first] = rows;
  return beats.size === 1 && first !== undefined ? ownBeat(first) : {};
}

function ownBeat({ timed, item }: DoneRow): Beat {
  const { dose, inCircuit } = timed.fitted;
  if (dose.kind === 'every') return { everySeconds: dose.everySeconds };
  if (dose.kind !== 'timed' || !(inCircuit || item.way === 'conditioning')) return {};
  const seconds = new Set(item.sets.filter(({ kind }) => kind === 'work').map((set) => set.seconds));
  const [work] = seconds;
  return seconds.size === 1 && work !== undefined ? { workSeconds: work, pauseSeconds: item.restSeconds } : {};
}
