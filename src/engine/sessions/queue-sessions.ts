/** The block's sessions as an ordered queue, each with a suggested date. What is done in them stands elsewhere. */
import { type Break, type Client, placeOfFact } from '../../model/client.js';
import { addDays, type Day, day, type Weekday, weekdayOf } from '../../model/day.js';
import type { SessionId } from '../../model/identity.js';
import { ofClient, type Problem } from '../../model/problem.js';
import type { CurveWeek, Programme, SessionTemplate } from '../../model/programme.js';
import { invariant, type Result } from '../../model/result.js';
import type { Rulebook } from '../rulebook.js';
import { QUEUE_SLIDES } from '../rules/queue-slides.js';

export interface QueuedSession {
  /** 1-based place in the queue. */
  readonly occurrence: number;
  /** 1-based. */
  readonly week: number;
  readonly curve: CurveWeek;
  readonly date: Day;
  readonly template: SessionTemplate;
}

export interface Queue {
  /** The day each week begins on: the first one is the client's first training day on or after the start. */
  readonly begins: readonly Day[];
  readonly sessions: readonly QueuedSession[];
  /** Of a block that is begun, those done already, each on the day it was done: they are not among `sessions`. */
  readonly done: readonly QueuedSession[];
  /** Rows of a begun block that were cut for time, by `session/row`: they stay cut. */
  readonly cut: ReadonlySet<string>;
  /** Of a begun block, the sets its done sessions asked for, by `occurrence/row`. */
  readonly worked: ReadonlyMap<string, number>;
  /** Templates that come up at all, in the programme's order. */
  readonly templates: readonly SessionTemplate[];
  /** In the order of the week that begins on the first one. */
  readonly days: readonly Weekday[];
  /** Breaks inside the block that moved sessions, and the weeks whose sessions are later than without them. */
  readonly moved: readonly { readonly pause: Break; readonly weeks: readonly number[] }[];
  /** Sessions at the end of the queue for which breaks, or missed days, left no day. */
  readonly lost: number;
}

/** Of a block that is begun. */
export interface QueueBegun {
  /** The day its first week begins on. */
  readonly first: Day;
  /** What was done, on which day, and for which it was planned. */
  readonly done: readonly { readonly occurrence: number; readonly day: Day; readonly planned: Day }[];
  /** Rows that its latest plan cut for time, by `session/row`; none where the minutes have changed since. */
  readonly cut: ReadonlySet<string>;
  /** Sets that the sessions done asked for, by `occurrence/row`. */
  readonly worked: ReadonlyMap<string, number>;
  /** The day of planning again. */
  readonly today: Day;
}

/**
 * Weeks begin on the client's first training day on or after the start and outside every break, and hold one session for each of the
 * client's days. With as many days as sessions, each week has every session in the programme's order; else the
 * programme's rotation for that number of days is followed from week to week without a break.
 *
 * The sessions are a queue: one whose day falls in a break waits for the next training day after it, and all later ones
 * follow in their order. The block ends on the same day as without breaks; what finds no day before that is left out.
 * Of a block that is begun the sessions not done yet go on from today in the same way.
 *
 * Reports `no-training-days`, `no-weeks`, `rotation-not-stated` and `rotation-unknown-session`; then `null`.
 */
export function queueSessions(
  programme: Programme,
  client: Client,
  rules: Rulebook,
  begun: QueueBegun | null = null,
): Result<Queue | null> {
  const scope = ofClient(client.id);
  const fail = (problem: Problem): Result<null> => ({ value: null, problems: [problem] });
  if (client.days.length === 0) {
    return fail({ code: 'no-training-days', severity: 'error', scope, place: placeOfFact(client, 'days'), data: {} });
  }
  if (programme.curve.length === 0 || programme.sessions.length === 0) {
    const data = { programme: programme.id };
    return fail({ code: 'no-weeks', severity: 'error', scope, place: programme.place, data });
  }
  const free = rules.valueOf(QUEUE_SLIDES);
  const pauses = client.breaks.map((pause): Pause => ({ pause, until: addDays(pause.until, free) }));
  const first = begun?.first ?? firstTrainingDay(client, pauses);
  const days = weekFrom(weekdayOf(first), client.days);
  const order = orderOf(programme, days.length);
  if (order === null) {
    const data = { days: days.length, sessions: programme.sessions.length };
    return fail({ code: 'rotation-not-stated', severity: 'error', scope, place: programme.place, data });
  }
  const byId = new Map<SessionId, SessionTemplate>(programme.sessions.map((session) => [session.id, session]));
  const unknown = order.find((id) => !byId.has(id));
  if (unknown !== undefined) {
    const data = { days: days.length, session: unknown };
    return fail({ code: 'rotation-unknown-session', severity: 'error', scope, place: programme.place, data });
  }
  const slots = programme.curve.flatMap((curve, index) =>
    days.map((weekday) => {
      return { curve, week: index + 1, date: addDays(first, 7 * index + daysFrom(weekdayOf(first), weekday)) };
    }),
  );
  const all = slots.map((slot, index): QueuedSession => {
    const id = order[index % order.length];
    const template = id === undefined ? undefined : byId.get(id);
    invariant(template !== undefined, 'every session of the order has been looked up');
    return { ...slot, occurrence: index + 1, template };
  });
  const open = slots.map(({ date }) => date).filter((date) => pauses.every((pause) => !isIn(date, pause)));
  const { sessions, done, lost } =
    begun === null ? inTurn(all, open) : goOn(all, open, { ...begun, days: days.length });
  const coming = new Set([...done, ...sessions].map((session) => session.template));
  const from = begun === null ? first : dayAfter(begun);
  return {
    value: {
      begins: beginningsOf(first, programme.curve.length, plannedDays(sessions, done, begun)),
      sessions,
      done,
      cut: begun?.cut ?? new Set(),
      worked: begun?.worked ?? new Map(),
      // Nothing is planned of a block that is done.
      templates: sessions.length === 0 ? [] : programme.sessions.filter((session) => coming.has(session)),
      days,
      moved: pauses.flatMap(({ pause, until }) => {
        const slot = slots.findIndex(({ date }) => date >= from && isIn(date, { pause, until }));
        const later = sessions.filter(({ occurrence, date }) => {
          return begun === null ? occurrence > slot && date !== slots[occurrence - 1]?.date : date > pause.from;
        });
        return slot === -1 ? [] : [{ pause, weeks: [...new Set(later.map(({ week }) => week))] }];
      }),
      lost,
    },
    problems: [],
  };
}

type Placed = Pick<Queue, 'sessions' | 'done' | 'lost'>;

/** One after the other on the days that are open, each keeping its place and its week of the curve. */
function inTurn(waiting: readonly QueuedSession[], open: readonly Day[]): Placed {
  const sessions = waiting.flatMap((session, index): readonly QueuedSession[] => {
    const date = open[index];
    return date === undefined ? [] : [{ ...session, date }];
  });
  return { sessions, done: [], lost: waiting.length - sessions.length };
}

interface GoingOn extends QueueBegun {
  /** Training days in the week. */
  readonly days: number;
}

/** What is not done yet, in its order, from the day after the last that was done; never more in a week than its days. */
function goOn(all: readonly QueuedSession[], open: readonly Day[], begun: GoingOn): Placed {
  const days = new Map(begun.done.map(({ occurrence, day }) => [occurrence, day]));
  const done = all.flatMap((session) => {
    const date = days.get(session.occurrence);
    return date === undefined ? [] : [{ ...session, date }];
  });
  const weekOf = (date: Day): number => Math.floor((date - begun.first) / 7);
  const trained = new Map<number, number>();
  const count = (date: Day): number => (trained.get(weekOf(date)) ?? 0) + 1;
  for (const { date } of done) trained.set(weekOf(date), count(date));
  const free = open.filter((date) => {
    if (date < dayAfter(begun) || count(date) > begun.days) return false;
    trained.set(weekOf(date), count(date));
    return true;
  });
  const waiting = all.filter(({ occurrence }) => !days.has(occurrence));
  return { ...inTurn(waiting, free), done };
}

/** The first day on which the next session may be: no two on one day. */
const dayAfter = ({ done, today }: QueueBegun): Day => day(Math.max(today, ...done.map((one) => one.day + 1)));

/** A week of a begun block begins where it was planned to, whatever day its sessions were done on. */
function plannedDays(
  sessions: readonly QueuedSession[],
  done: readonly QueuedSession[],
  begun: QueueBegun | null,
): readonly QueuedSession[] {
  const planned = new Map(begun?.done.map((one) => [one.occurrence, one.planned]));
  return [...done, ...sessions]
    .map((session) => ({ ...session, date: planned.get(session.occurrence) ?? session.date }))
    .sort((a, b) => a.occurrence - b.occurrence);
}

/** A break with the days left free after it. */
interface Pause {
  readonly pause: Break;
  readonly until: Day;
}

const isIn = (date: Day, { pause, until }: Pause): boolean => date >= pause.from && date <= until;

/**
 * Each week begins on its weekday before its first session, or before an earlier one of a later week that was done out
 * of turn; one without sessions a week after the one before it, at most. The first begins with the block.
 */
function beginningsOf(first: Day, weeks: number, sessions: readonly QueuedSession[]): readonly Day[] {
  const begins: Day[] = [first];
  for (let week = 2; week <= weeks; week += 1) {
    const after = addDays(begins.at(-1) ?? first, 7);
    const coming = sessions.filter((session) => session.week >= week);
    const earliest = Math.min(...coming.map(({ date }) => date));
    const before = coming.length === 0 ? after : addDays(first, 7 * Math.floor((earliest - first) / 7));
    begins.push(coming.some((session) => session.week === week) ? before : day(Math.min(before, after)));
  }
  return begins;
}

/** The sessions of a programme as they follow each other with so many days a week; `null` where it does not say. */
export function orderOf(programme: Programme, days: number): readonly SessionId[] | null {
  const stated = programme.rotations.find((rotation) => rotation.days === days)?.order;
  if (stated !== undefined && stated.length > 0) return stated;
  return days === programme.sessions.length ? programme.sessions.map((session) => session.id) : null;
}

const daysFrom = (from: Weekday, to: Weekday): number => (to - from + 7) % 7;

/** On or after the start, outside every break. Each step goes past the end of one, so that it comes to an end. */
function firstTrainingDay(client: Client, pauses: readonly Pause[]): Day {
  const from = (day: Day): Day => addDays(day, Math.min(...client.days.map((each) => daysFrom(weekdayOf(day), each))));
  let day = from(client.starts);
  for (let pause = pauses.find((one) => isIn(day, one)); pause !== undefined; ) {
    day = from(addDays(pause.until, 1));
    pause = pauses.find((one) => isIn(day, one));
  }
  return day;
}

const weekFrom = (first: Weekday, days: readonly Weekday[]): readonly Weekday[] =>
  [...new Set(days)].sort((a, b) => daysFrom(first, a) - daysFrom(first, b));
