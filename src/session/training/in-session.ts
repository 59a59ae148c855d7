/** The session in hand: its marks, its sets as they are done today, and where in it one is. */
import type { LogEvent } from '../../model/log.js';
import type { LastMarked, SessionPlace } from '../../model/training.js';
import { hasSets, isLeftOff, type SteppedSession, stepSession } from '../step-session.js';
import { alarmsIn, closedIn, isKeptFrom, placeOf } from './home.js';
import { inOrder } from './marked-sets.js';
import type { SetToday } from './set-today.js';
import { placeAmong, type SessionToday, sessionToday } from './sets-today.js';
import type { Told } from './told.js';
import type { TrainingState } from './training-state.js';

export interface InSession {
  readonly told: Told;
  readonly state: TrainingState;
  /** In order, without what was taken back. */
  readonly marks: readonly LogEvent[];
  readonly place: SessionPlace;
  readonly stepped: SteppedSession;
  readonly today: SessionToday;
}

/** `null` where none is, where it is not to be gone on with, or where it was left so long ago that the next is next. */
export function inSession(told: Told, state: TrainingState): InSession | null {
  if (state.occurrence === null || told.standing !== 'stands') return null;
  const marks = inOrder(told.events);
  if (alarmsIn(told.plan, marks).length > 0 && state.view !== 'pain') return null;
  const { sessions } = stepSession(told.plan, marks, new Date(told.now));
  const place = placeOf(told.plan, state.occurrence, closedIn(sessions));
  const stepped = sessions.find(({ occurrence }) => occurrence === state.occurrence);
  if (place === null || stepped === undefined) return null;
  if (stepped.status === 'under way' && hasSets(stepped) && isLeftOff(stepped, told.now)) return null;
  const today = sessionToday(told, state, marks, stepped);
  return today === null ? null : { told, state, marks, place, stepped, today };
}

/**
 * How the client is, as said for this time: what was said on another day, and nothing done then, is asked again, and so is it
 * after what kept from training.
 */
export const askedToday = ({ stepped, told, state, marks }: InSession): SteppedSession['today'] =>
  !hasSets(stepped) && (isLeftOff(stepped, told.now) || isKeptFrom(told, state, marks, stepped)) ? null : stepped.today;

/** The set marked latest among the work; `null` where none is. */
export function latestMarked({ work }: SessionToday): SetToday | null {
  let latest: SetToday | null = null;
  for (const one of work) {
    if (one.first !== null && one.first.order >= (latest?.first?.order ?? 0)) latest = one;
  }
  return latest;
}

/** The first open set after the one marked latest, else the first open one; `null` where nothing is open. */
export function nextOpen(today: SessionToday): SetToday | null {
  const latest = latestMarked(today);
  const from = latest === null ? 0 : today.work.indexOf(latest) + 1;
  const open = ({ stepped }: SetToday): boolean => stepped.marked === null;
  return today.work.slice(from).find(open) ?? today.work.find(open) ?? null;
}

/** What can be rubbed out, or told otherwise. */
export function lastMarked(today: SessionToday): LastMarked | null {
  const latest = latestMarked(today);
  if (latest === null) return null;
  return {
    key: latest.stepped.key,
    number: placeAmong(today.work, latest).number,
    row: latest.item.row,
  };
}
