/**
 * A page that is opened anew stands as it was left, so that a phone that died costs nothing. Only where a set was under
 * way for longer than any set, a session was let be, or a new edition has come, does the way in come first.
 */
import type { Moment } from '../../model/training.js';
import { inSession } from './in-session.js';
import type { Told } from './told.js';
import type { TrainingState, View } from './training-state.js';

/** No set of reps lasts so long; a timed one may, and has it beyond its time. */
const SET_MS = 180_000;
/** Who rested longer has been at something else. */
const LET_BE_MS = 3_600_000;

const BESIDE: readonly View[] = ['finished', 'send', 'this phone'];

export function comeBack(told: Told, state: TrainingState): TrainingState {
  const home: TrainingState = { ...state, view: 'home', different: null, pain: null };
  // What an edition changes is read before it is gone on with.
  if (told.seenEdition !== null && told.seenEdition < told.plan.edition) return home;
  const at = inSession(told, state);
  // Nobody is told once more that it is done, or asked once more to send.
  if (at === null || at.stepped.status === 'closed' || BESIDE.includes(state.view)) return home;
  const { inHand } = state;
  const set = at.today.work.find(({ stepped }) => stepped.key === inHand?.key && stepped.marked === null);
  if (set !== undefined && inHand !== null) {
    const lasts: Moment = SET_MS + 1000 * (set.figures.set.seconds ?? 0);
    return told.now - inHand.began > lasts ? home : state;
  }
  return told.now - (at.stepped.lastMark ?? told.now) > LET_BE_MS ? home : state;
}
