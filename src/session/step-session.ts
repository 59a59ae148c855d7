/**
 * Where a client stands in a booklet, from the plan and what was marked: a pure fold, the same on every device. Time is
 * told, never counted: a rest is over so many seconds after the moment its set was marked, whether the phone slept or not.
 */
import type { ClientItem, ClientPlan, ClientSession, ClientSet } from '../model/client-plan.js';
import type { ExerciseId, RowId, SessionId, SetKey } from '../model/identity.js';
import { bookletId, readSetKey } from '../model/identity.js';
import type { LogEvent } from '../model/log.js';
import type { Seconds } from '../model/quantity.js';
import { mergeEvents } from './merge-events.js';

type SetEvent = Extract<LogEvent, { readonly kind: 'set' }>;

export type SessionStatus = 'not begun' | 'under way' | 'closed';

/** A set of a session in the order it is done, circuits round by round. */
export interface SteppedSet {
  readonly key: SetKey;
  readonly row: RowId;
  readonly exercise: ExerciseId;
  readonly set: ClientSet;
  /** Rest that follows it. */
  readonly rest: Seconds;
  /** The last word on it; `null` where nothing is marked. */
  readonly marked: SetEvent | null;
}

export interface SteppedSession {
  readonly id: SessionId;
  /** 1-based place in the block's queue. */
  readonly occurrence: number;
  readonly status: SessionStatus;
  /** The moment of its latest mark; `null` where nothing is. */
  readonly lastMark: number | null;
  /** How one felt before it, as last said. */
  readonly today: Extract<LogEvent, { readonly kind: 'opened' }>['today'] | null;
  /** Warm-up and cool-down sets are among them, where they are sets at all. */
  readonly sets: readonly SteppedSet[];
  /** Sets marked under a key that the plan does not have. */
  readonly extra: readonly SetEvent[];
  /** The first set after the last one marked that is not marked itself, else the first that is not; `null` at the end. */
  readonly next: SetKey | null;
  /** Signs of alarm said in it that were not taken back. */
  readonly alarm: boolean;
}

export interface Rest {
  readonly after: SetKey;
  /** Milliseconds since 1970, as every moment here. */
  readonly began: number;
  readonly over: number;
  /** Whole seconds still to rest, rounded up; 0 where it is over. */
  readonly left: Seconds;
}

export interface Stepped {
  readonly sessions: readonly SteppedSession[];
  /** The session under way, else the first of the queue of which nothing was done; `null` where the block is done. */
  readonly next: number | null;
  /** Of the session under way, after its latest set; `null` where nothing is to be rested for. */
  readonly rest: Rest | null;
}

/** `events` are all of this booklet, in any order; of other blocks they are passed by. `now` is the moment. */
export function stepSession(
  plan: Pick<ClientPlan, 'block' | 'weeks'>,
  events: readonly LogEvent[],
  now: Date,
): Stepped {
  const log = { schema: 1, bookletId: bookletId(''), device: '', events } as const;
  const marks = mergeEvents([log]).map(({ event }) => event);
  const { block } = plan;
  const own = byOccurrence(marks, block);
  const sessions = plan.weeks.flatMap((week) =>
    week.sessions.map((session) => stepOne(session, own.get(session.occurrence) ?? [])),
  );
  const under = sessions.findLast((one) => one.status === 'under way' && !isLeftOff(one, now.getTime()));
  const next = under ?? sessions.find(isOpen) ?? null;
  return { sessions, next: next?.occurrence ?? null, rest: under === undefined ? null : restIn(under, now.getTime()) };
}

/** Nothing was done of it yet. */
export const isOpen = (one: SteppedSession): boolean => one.status !== 'closed' && !hasSets(one);

/** Closed with nothing done: every set that is marked was left out. */
export const isLetBe = ({ status, sets, extra }: SteppedSession): boolean => {
  const marked = [...sets.flatMap((set) => set.marked ?? []), ...extra];
  return status === 'closed' && marked.length > 0 && marked.every(({ done }) => done === 'left out');
};

/** Whoever marked nothing for half a day has left off, without having said so. */
const LEFT_OFF = 12 * 60 * 60 * 1000;
export const isLeftOff = ({ lastMark }: SteppedSession, now: number): boolean => now - (lastMark ?? 0) >= LEFT_OFF;

/** To open a session, or to say how one feels before it, is not to have done anything of it. */
export const hasSets = ({ sets, extra }: SteppedSession): boolean =>
  extra.length > 0 || sets.some(({ marked }) => marked !== null);

/** The marks of each session, in order; those of no session, or of a set in another block, are passed by. */
function byOccurrence(marks: readonly LogEvent[], block: number): ReadonlyMap<number, readonly LogEvent[]> {
  const own = new Map<number, LogEvent[]>();
  for (const event of marks) {
    const key = event.kind === 'set' ? readSetKey(event.key) : null;
    const inBlock = key?.block === block ? key.occurrence : undefined;
    const occurrence = event.kind === 'set' ? inBlock : 'occurrence' in event ? event.occurrence : undefined;
    if (occurrence === undefined) continue;
    const before = own.get(occurrence);
    if (before === undefined) own.set(occurrence, [event]);
    else before.push(event);
  }
  return own;
}

/** A block is stepped through again at every tap, and most of its sessions have no mark: those are worked out once. */
const unmarked = new WeakMap<ClientSession, SteppedSession>();

function stepOne(session: ClientSession, own: readonly LogEvent[]): SteppedSession {
  if (own.length > 0) return stepMarked(session, own);
  const before = unmarked.get(session);
  if (before !== undefined) return before;
  const stepped = stepMarked(session, own);
  unmarked.set(session, stepped);
  return stepped;
}

/** Begun when it is opened or something of it is marked; closed by the client's word alone, whatever is put right later. */
function stepMarked(session: ClientSession, own: readonly LogEvent[]): SteppedSession {
  const { occurrence } = session;
  const words = new Map<string, SetEvent>();
  for (const event of own) if (event.kind === 'set') words.set(event.key, event);
  const sets = setsInOrder(session).map((one): SteppedSet => ({ ...one, marked: words.get(one.key) ?? null }));
  const known = new Set<string>(sets.map(({ key }) => key));
  const closed = own.some(({ kind }) => kind === 'closed');
  const moments = own.filter((event) => !isSaidLater(event)).map(momentOf);
  const opened = own.findLast((event) => event.kind === 'opened');
  const at = latestOf(sets);
  const open = ({ marked }: SteppedSet): boolean => marked === null;
  return {
    id: session.id,
    occurrence,
    status: closed ? 'closed' : own.length > 0 ? 'under way' : 'not begun',
    lastMark: moments.length === 0 ? null : Math.max(...moments),
    today: opened?.kind === 'opened' ? opened.today : null,
    sets,
    extra: [...words.values()].filter(({ key }) => !known.has(key)),
    next: (sets.slice(at + 1).find(open) ?? sets.find(open))?.key ?? null,
    alarm: own.some((event) => event.kind === 'pain' && event.report.alarm !== undefined),
  };
}

/** How it was the next morning is said before another session: nobody is at this one again. */
const isSaidLater = (event: LogEvent): boolean => event.kind === 'pain' && event.report.worseNextMorning !== undefined;

/** Index of the set marked latest; of one moment the later in the plan. -1 where none is. */
function latestOf(sets: readonly SteppedSet[]): number {
  const moments = sets.map(({ marked }) => (marked === null ? Number.NEGATIVE_INFINITY : momentOf(marked)));
  const latest = Math.max(Number.NEGATIVE_INFINITY, ...moments);
  return latest === Number.NEGATIVE_INFINITY ? -1 : moments.lastIndexOf(latest);
}

const momentOf = ({ at }: LogEvent): number => {
  const moment = Date.parse(at);
  return Number.isNaN(moment) ? 0 : moment;
};

type Planned = Omit<SteppedSet, 'marked'>;

/** Row by row; in a circuit one round of each row in turn. */
function setsInOrder({ groups }: ClientSession): readonly Planned[] {
  return groups.flatMap(({ kind, items }): readonly Planned[] => {
    const rows = items.map(setsOf);
    if (kind !== 'circuit') return rows.flat();
    const rounds = Math.max(0, ...rows.flatMap((row) => row.map(({ round }) => round)));
    return Array.from({ length: rounds }, (_, index) =>
      rows.flatMap((row) => row.filter(({ round }) => round === index + 1)),
    ).flat();
  });
}

/** Numbered through an item: what warms up or is tried stands in the round it takes. */
function setsOf(item: ClientItem): readonly (Planned & { readonly round: number })[] {
  let round = 0;
  let last = '';
  return item.sets.map((set) => {
    const at = `${set.kind}/${set.round}`;
    if (at !== last) round += 1;
    last = at;
    return { key: set.key, row: item.row, exercise: set.exercise ?? item.exercise, set, rest: item.restSeconds, round };
  });
}

/** From the moment the latest set was marked; none after the last set of all, nor after one left out. */
function restIn({ sets, next }: SteppedSession, now: number): Rest | null {
  const latest = sets[latestOf(sets)];
  if (latest?.marked == null || latest.marked.done === 'left out' || latest.rest === 0 || next === null) return null;
  const began = momentOf(latest.marked);
  const over = began + 1000 * latest.rest;
  return { after: latest.key, began, over, left: Math.max(0, Math.ceil((over - now) / 1000)) };
}
