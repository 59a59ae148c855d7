/**
 * The tallies of one week, exercise by exercise, as the marks have them now. Every printed set stands in its tally, warm-ups apart:
 * what was printed and is not done any more is left out, whether a session is over or was planned again without it.
 */
import type { RowId, SessionId } from '../../model/identity.js';
import type { TallyRow, TallyState } from '../../model/training.js';
import { hasSets, isLeftOff, type SteppedSession, type SteppedSet, stepSession } from '../step-session.js';
import { inOrder } from './marked-sets.js';
import { type SessionToday, sessionToday } from './sets-today.js';
import { tallyRows } from './tally-rows.js';
import type { Told } from './told.js';
import { openTraining, type TrainingState } from './training-state.js';

export interface RowTally {
  readonly session: SessionId;
  readonly week: number;
  readonly occurrence: number;
  readonly row: RowId;
  readonly tally: readonly TallyRow[];
}

/** `week`: its number. */
export function weekTallies(told: Told, state: TrainingState, week: number): readonly RowTally[] {
  const { plan, now } = told;
  const own = new Set(plan.weeks.find(({ number }) => number === week)?.sessions.map(({ occurrence }) => occurrence));
  const marks = inOrder(told.events);
  return stepSession(plan, marks, new Date(now)).sessions.flatMap((stepped): readonly RowTally[] => {
    const { id: session, occurrence } = stepped;
    const inHand = state.occurrence === occurrence;
    const today = own.has(occurrence) ? sessionToday(told, inHand ? state : openTraining(), marks, stepped) : null;
    if (today === null) return [];
    const isAsked = askedIn(today, inHand || stepped.status === 'under way');
    const isOpen = !isOver(told, stepped);
    // One beyond the plan that nobody does any more is as if nobody had asked for it.
    const extra = today.work.filter((one) => one.extra === true && (isOpen || one.stepped.marked !== null));
    const sets = [...stepped.sets, ...extra.map((one) => one.stepped)];
    const stateOf = (set: SteppedSet): TallyState =>
      set.marked?.done ?? (isOpen && isAsked(set) ? 'to do' : 'left out');
    return [...new Set(today.session.groups.flatMap(workIn))].map((row) => ({
      session,
      week,
      occurrence,
      row,
      tally: tallyRows(
        sets.filter((one) => one.row === row && one.set.kind !== 'warm-up'),
        stateOf,
      ),
    }));
  });
}

const workIn = ({ kind, items }: SessionToday['session']['groups'][number]): readonly RowId[] =>
  kind === 'warm-up' || kind === 'cool-down' ? [] : items.map(({ row }) => row);

/** Nobody goes on with it. */
const isOver = ({ standing, now }: Told, stepped: SteppedSession): boolean =>
  standing !== 'stands' || stepped.status === 'closed' || (hasSets(stepped) && isLeftOff(stepped, now));

/** What must first be earned may still be, before its day: then alone it is known what is done otherwise. */
const askedIn =
  ({ work }: SessionToday, isBegun: boolean) =>
  ({ key, row }: SteppedSet): boolean =>
    work.some(({ stepped, gate }) => stepped.key === key || (!isBegun && stepped.row === row && gate !== undefined));
