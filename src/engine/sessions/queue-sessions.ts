/** The block's sessions as an ordered queue, each with a suggested date. What is done in them stands elsewhere. */
import { type Client, placeOfFact } from '../../model/client.js';
import { addDays, type Day, type Weekday, weekdayOf } from '../../model/day.js';
import type { SessionId } from '../../model/identity.js';
import { ofClient, type Problem } from '../../model/problem.js';
import type { CurveWeek, Programme, SessionTemplate } from '../../model/programme.js';
import { invariant, type Result } from '../../model/result.js';

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
}

/**
 * Weeks begin on the client's first training day on or after the start, and hold one session for each of the
 * client's days. With as many days as sessions, each week has every session in the programme's order; else the
 * programme's rotation for that number of days is followed from week to week without a break.
 *
 * Reports `no-training-days`, `no-weeks`, `rotation-not-stated` and `rotation-unknown-session`; then `null`.
 */
export function queueSessions(programme: Programme, client: Client): Result<Queue | null> {
  const scope = ofClient(client.id);
  const fail = (problem: Problem): Result<null> => ({ value: null, problems: [problem] });
  if (client.days.length === 0) {
    return fail({ code: 'no-training-days', severity: 'error', scope, place: placeOfFact(client, 'days'), data: {} });
  }
  if (programme.curve.length === 0 || programme.sessions.length === 0) {
    const data = { programme: programme.id };
    return fail({ code: 'no-weeks', severity: 'error', scope, place: programme.place, data });
  }
  const first = firstTrainingDay(client);
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
  const sessions: QueuedSession[] = [];
  for (const [index, curve] of programme.curve.entries()) {
    for (const weekday of days) {
      const id = order[sessions.length % order.length];
      const template = id === undefined ? undefined : byId.get(id);
      invariant(template !== undefined, 'every session of the order has been looked up');
      const date = addDays(first, 7 * index + daysFrom(weekdayOf(first), weekday));
      sessions.push({ occurrence: sessions.length + 1, week: index + 1, curve, date, template });
    }
  }
  const used = new Set(sessions.map((session) => session.template));
  return {
    value: {
      begins: programme.curve.map((_, index) => addDays(first, 7 * index)),
      sessions,
      templates: programme.sessions.filter((session) => used.has(session)),
      days,
    },
    problems: [],
  };
}

function orderOf(programme: Programme, days: number): readonly SessionId[] | null {
  const stated = programme.rotations.find((rotation) => rotation.days === days)?.order;
  if (stated !== undefined && stated.length > 0) return stated;
  return days === programme.sessions.length ? programme.sessions.map((session) => session.id) : null;
}

const daysFrom = (from: Weekday, to: Weekday): number => (to - from + 7) % 7;

function firstTrainingDay(client: Client): Day {
  const start = weekdayOf(client.starts);
  return addDays(client.starts, Math.min(...client.days.map((day) => daysFrom(start, day))));
}

const weekFrom = (first: Weekday, days: readonly Weekday[]): readonly Weekday[] =>
  [...new Set(days)].sort((a, b) => daysFrom(first, a) - daysFrom(first, b));
