/** The way in: what is to be known first, and what would be done next. */
import type { ClientPlan } from '../../model/client-plan.js';
import { dayOfIso } from '../../model/day.js';
import type { AlarmSign, LogEvent } from '../../model/log.js';
import type { HomeScreen, Notice, SessionPlace } from '../../model/training.js';
import { hasSets, isLetBe, isOpen, type SteppedSession, stepSession } from '../step-session.js';
import { inOrder } from './marked-sets.js';
import { adviceFor } from './pain-screen.js';
import { placeAmong, sessionToday } from './sets-today.js';
import type { Told } from './told.js';
import { isEased, type TrainingState } from './training-state.js';

export function placeOf(plan: ClientPlan, occurrence: number, closed: number): SessionPlace | null {
  const of = plan.weeks.reduce((sum, { sessions }) => sum + sessions.length, 0);
  for (const week of plan.weeks) {
    const session = week.sessions.find((one) => one.occurrence === occurrence);
    if (session === undefined) continue;
    const { id, name, date, minutes } = session;
    return {
      occurrence,
      session: id,
      name,
      week: week.number,
      date,
      easyWeek: week.deload,
      minutes,
      done: closed,
      of,
    };
  }
  return null;
}

/** One that was let be is over, and not done. */
export const closedIn = (sessions: readonly SteppedSession[]): number =>
  sessions.filter((one) => one.status === 'closed' && !isLetBe(one)).length;

/** What would come where that one is let be. */
export function nextBut({ plan, events, now }: Told, occurrence: number): SessionPlace | null {
  const { sessions } = stepSession(plan, inOrder(events), new Date(now));
  const next = sessions.find((one) => one.occurrence > occurrence && isOpen(one));
  if (next === undefined || beyondLast(plan, next.occurrence)) return null;
  return placeOf(plan, next.occurrence, closedIn(sessions));
}

export function homeScreen(told: Told, state: TrainingState): HomeScreen {
  const { plan, now, standing, events } = told;
  const marks = inOrder(events);
  const { sessions, next } = stepSession(plan, marks, new Date(now));
  const closed = closedIn(sessions);
  const signs = alarmsIn(plan, marks);
  const shut = signs.length > 0 || standing !== 'stands' || told.fault !== null;
  const occurrence = next !== null && beyondLast(plan, next) ? null : next;
  const place = occurrence === null || shut ? null : placeOf(plan, occurrence, closed);
  const under = sessions.find((one) => one.occurrence === occurrence && one.status === 'under way');
  const notices: Notice[] = [];
  if (standing !== 'stands') notices.push({ kind: standing });
  if (signs.length > 0) notices.push({ kind: 'alarm', signs });
  if (told.fault !== null) notices.push({ kind: 'cannot keep', fault: told.fault });
  if (plan.edition === 0) notices.push({ kind: 'draft' });
  if (told.seenEdition === null && marks.length === 0) {
    // What is said of marks on a first opening is not so of a draft, and of no use where nothing is to be done.
    if (plan.edition > 0 && !shut) notices.push({ kind: 'first opening' });
  } else if (told.seenEdition !== null && told.seenEdition < plan.edition)
    notices.push({ kind: 'new edition', edition: plan.edition });
  if (place !== null && under !== undefined) {
    const kept = !hasSets(under) && isKeptFrom(told, state, marks, under);
    // On another day it is asked of on the way in.
    if (!kept) notices.push(interrupted(told, state, marks, place, under));
    else if (marks.at(-1)?.at.slice(0, 10) === told.today) notices.push({ kind: 'hurt' });
  }
  const away = place === null || under !== undefined ? null : awayIn(told, marks, place);
  if (away !== null) notices.push(away);
  const unsent = plan.edition === 0 ? 0 : unsentIn(told, marks);
  if (unsent > 0) notices.push({ kind: 'not sent', sessions: unsent });
  return { kind: 'home', notices, next: place };
}

/** Sessions after the plan's last day are not offered: why they stop is the coach's to say. */
function beyondLast({ last, weeks }: ClientPlan, occurrence: number): boolean {
  if (last === undefined) return false;
  const session = weeks.flatMap(({ sessions }) => sessions).find((one) => one.occurrence === occurrence);
  return session !== undefined && session.date > last;
}

/** Said in this edition or a later one: a new edition is the coach's answer. */
export function alarmsIn(plan: ClientPlan, marks: readonly LogEvent[]): readonly AlarmSign[] {
  const signs = marks.flatMap((event) =>
    event.kind === 'pain' && event.edition >= plan.edition && event.report.alarm !== undefined
      ? [event.report.alarm]
      : [],
  );
  return [...new Set(signs)];
}

/** The last word before it was that something hurts, more than gently, and no easier way was taken for all of it. */
export function isKeptFrom(
  { plan }: Told,
  state: TrainingState,
  marks: readonly LogEvent[],
  { occurrence }: SteppedSession,
): boolean {
  const said = marks.findLast(
    (event) =>
      (event.kind === 'opened' || (event.kind === 'pain' && event.row === undefined)) &&
      event.occurrence === occurrence,
  );
  const easier = state.occurrence === occurrence && isEased(state);
  return said?.kind === 'pain' && !easier && adviceFor(plan, said.report.degree) !== 'gently';
}

function interrupted(
  told: Told,
  state: TrainingState,
  marks: readonly LogEvent[],
  place: SessionPlace,
  under: SteppedSession,
): Notice {
  const { inHand } = state;
  const today = sessionToday(told, state, marks, under);
  const set = today?.work.find(({ stepped }) => stepped.key === inHand?.key && stepped.marked === null);
  const began = set === undefined ? null : (inHand?.began ?? null);
  const left = Math.max(under.lastMark ?? 0, began ?? 0);
  const minutes = Math.max(0, Math.floor((told.now - left) / 60_000));
  if (today === null || set === undefined || began === null) return { kind: 'interrupted', place, minutes, set: null };
  return {
    kind: 'interrupted',
    place,
    minutes,
    set: { key: set.stepped.key, began, ...placeAmong(today.work, set) },
  };
}

/** Whole days since the last mark, where a session was due meanwhile; who never began was not away. */
function awayIn({ plan, today }: Told, marks: readonly LogEvent[], { date }: SessionPlace): Notice | null {
  const last = marks.at(-1)?.at.slice(0, 10);
  const [from, to] = [last === undefined ? undefined : dayOfIso(last), dayOfIso(today)];
  if (from === undefined || to === undefined || to - from < plan.phone.awaySaid || date >= today) return null;
  return { kind: 'away', days: to - from, long: to - from >= plan.away };
}

export function unsentIn({ passedAt }: Told, marks: readonly LogEvent[]): number {
  const closed = marks.filter(({ kind }) => kind === 'closed');
  return closed.filter(({ at }) => passedAt === null || Date.parse(at) > passedAt).length;
}
