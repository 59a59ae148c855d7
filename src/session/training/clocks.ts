/** Rests, holds and signals, each told from a moment and never counted: a phone that slept knows them as well. */
import { readSetKey } from '../../model/identity.js';
import type { Clock, Moment, Rest } from '../../model/training.js';
import { type InSession, latestMarked } from './in-session.js';
import type { SetToday } from './set-today.js';
import type { TrainingState } from './training-state.js';

/** A moment that lies further ahead than this was told by a clock that has been put back since: it says nothing. */
const PUT_BACK_MS = 60_000;
/** A clock that ended longer ago than this was left, and begins anew. */
const LEFT_MS = 180_000;

/**
 * From the moment the latest set was marked. None before the first set, after one that was left out, between the two
 * sides of one round, where a clock leads, or once the next set was begun.
 */
export function restOf({ state, today, told }: InSession, next: SetToday): Rest | null {
  const latest = latestMarked(today);
  if (latest?.first == null || latest.stepped.marked?.done === 'left out') return null;
  if (state.inHand?.key === next.stepped.key) return null;
  const { group, stepped } = latest;
  if (group.everySeconds !== undefined) return null;
  const byClock = group.workSeconds !== undefined;
  const seconds = byClock ? (group.pauseSeconds ?? 0) : stepped.rest;
  if (seconds === 0 || (!byClock && isOtherSide(latest, next))) return null;
  const marked = state.rested?.key === stepped.key ? state.rested.began : latest.first.moment;
  if (marked - told.now > PUT_BACK_MS) return null;
  const longer = state.longer?.after === stepped.key ? state.longer.seconds : 0;
  const began = Math.min(marked, told.now);
  return { began, over: began + Math.round(1000 * (seconds + longer)) };
}

/** A rest that would begin again in a moment begins now, so that it is never longer than it is; of one further off nobody knows. */
export function afterPutBack(state: TrainingState, now: Moment): TrainingState {
  const { rested } = state;
  if (rested === null || rested.began <= now || isAhead(rested.began, now)) return state;
  return { ...state, rested: { ...rested, began: now } };
}

function isOtherSide(a: SetToday, b: SetToday): boolean {
  const [one, other] = [readSetKey(a.stepped.key), readSetKey(b.stepped.key)];
  return (
    one !== null &&
    other !== null &&
    one.row === other.row &&
    one.kind === other.kind &&
    one.ordinal === other.ordinal &&
    one.side !== other.side
  );
}

/** `rest` is the one before that set, over or not. */
export function clockOf(at: InSession, set: SetToday, rest: Rest | null): Clock {
  const { group, figures } = set;
  const { everySeconds, workSeconds, pauseSeconds } = group;
  if (everySeconds !== undefined) {
    const rounds = at.today.work.filter((one) => one.group === group).length;
    return { kind: 'every', everySeconds, rounds, began: signalsFrom(at, set, everySeconds * (rounds + 1)) };
  }
  if (workSeconds !== undefined) {
    const began = handOf(at, set) ?? afterPause(at, set, rest, workSeconds);
    return { kind: 'work and pause', workSeconds, pauseSeconds: pauseSeconds ?? 0, began };
  }
  const { seconds } = figures.set;
  if (seconds === undefined) return { kind: 'none' };
  const tapped = handOf(at, set);
  return { kind: 'timed', seconds, began: tapped === null ? null : tapped + 1000 * at.told.plan.phone.intoPlace };
}

const isAhead = (moment: Moment, now: Moment): boolean => moment - now > PUT_BACK_MS;

function handOf({ state, told }: InSession, { stepped }: SetToday): Moment | null {
  const { inHand } = state;
  return inHand?.key !== stepped.key || isAhead(inHand.began, told.now) ? null : inHand.began;
}

/** Signals that ended a whole one ago were left. */
function signalsFrom({ state, told }: InSession, set: SetToday, lasts: number): Moment | null {
  const { clock } = state;
  if (clock === null || clock.row !== clockName(set) || isAhead(clock.began, told.now)) return null;
  return told.now < clock.began + 1000 * lasts ? clock.began : null;
}

/** A clock of signals is one for its whole group. */
export const clockName = ({ group, item }: SetToday): string => group.items[0]?.row ?? item.row;

/** Where work goes by the clock, it begins by itself when the pause is over: no hand has to be free for it. */
function afterPause({ told, today }: InSession, set: SetToday, rest: Rest | null, work: number): Moment | null {
  if (rest === null || latestMarked(today)?.group !== set.group) return null;
  const left = told.now - rest.over - 1000 * work;
  return told.now < rest.over || left > LEFT_MS ? null : rest.over;
}
