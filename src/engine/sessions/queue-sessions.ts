/** The block's sessions as an ordered queue, each with a suggested date. What is done in them stands elsewhere. */
import { type Break, type Client, placeOfFact } from '../../model/client.js';
import { addDays, type Day, type Weekday, weekdayOf } from '../../model/day.js';
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
  /** Templates that come up at all, in the programme's order. */
  readonly templates: readonly SessionTemplate[];
  /** In the order of the week that begins on the first one. */
  readonly days: readonly Weekday[];
  /** Breaks inside the block that moved sessions, and the weeks whose sessions are later than without them. */
  readonly moved: readonly { readonly pause: Break; readonly weeks: readonly number[] }[];
  /** Sessions at the end of the queue for which breaks left no day. */
  readonly lost: number;
}

/**
 * Weeks begin on the client's first training day on or after the start and outside every break, and hold one session for each of the
 * client's days. With as many days as sessions, each week has every session in the programme's order; else the
 * programme's rotation for that number of days is followed from week to week without a break.
 *
 * The sessions are a queue: one whose day falls in a break waits for the next training day after it, and all later ones
 * follow in their order. The block ends on the same day as without breaks; what finds no day before that is left out.
 *
 * Reports `no-training-days`, `no-weeks`, `rotation-not-stated` and `rotation-unknown-session`; then `null`.
 */
export function queueSessions(programme: Programme, client: Client, rules: Rulebook): Result<Queue | null> {
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
  const first = firstTrainingDay(client, pauses);
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
  const all = programme.curve.flatMap((curve, index) =>
    days.map((weekday) => {
      return { curve, week: index + 1, date: addDays(first, 7 * index + daysFrom(weekdayOf(first), weekday)) };
    }),
  );
  const open = all.filter(({ date }) => pauses.every((pause) => !isIn(date, pause)));
  const sessions = all.flatMap(({ curve, week }, index): readonly QueuedSession[] => {
    const date = open[index]?.date;
    const id = order[index % order.length];
    const template = id === undefined ? undefined : byId.get(id);
    invariant(template !== undefined, 'every session of the order has been looked up');
    return date === undefined ? [] : [{ occurrence: index + 1, week, curve, date, template }];
  });
  const used = new Set(sessions.map((session) => session.template));
  return {
    value: {
      begins: beginningsOf(first, programme.curve.length, sessions),
      sessions,
      templates: programme.sessions.filter((session) => used.has(session)),
      days,
      moved: pauses.flatMap(({ pause, until }) => {
        const slot = all.findIndex(({ date }) => isIn(date, { pause, until }));
        const later = sessions.filter((session, index) => index >= slot && session.date !== all[index]?.date);
        return slot === -1 ? [] : [{ pause, weeks: [...new Set(later.map(({ week }) => week))] }];
      }),
      lost: all.length - sessions.length,
    },
    problems: [],
  };
}

/** A break with the days left free after it. */
interface Pause {
  readonly pause: Break;
  readonly until: Day;
}

const isIn = (date: Day, { pause, until }: Pause): boolean => date >= pause.from && date <= until;

/** Each week begins on its weekday before its first session; one without sessions a week after the one before it. */
function beginningsOf(first: Day, weeks: number, sessions: readonly QueuedSession[]): readonly Day[] {
  const begins: Day[] = [];
  for (let week = 1; week <= weeks; week += 1) {
    const own = sessions.find((session) => session.week === week)?.date;
    const before = begins.at(-1);
    const next = before === undefined ? first : addDays(before, 7);
    begins.push(own === undefined ? next : addDays(first, 7 * Math.floor((own - first) / 7)));
  }
  return begins;
}

function orderOf(programme: Programme, days: number): readonly SessionId[] | null {
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
