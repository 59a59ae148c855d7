/** What is said of pain → what is kept of it and what follows: a sign of alarm ends training, a degree eases or leaves the exercise. */
import type { RowId } from '../../model/identity.js';
import type { LogEvent } from '../../model/log.js';
import type { Act } from '../../model/training.js';
import { stepSession } from '../step-session.js';
import { canBeEased, openAlike } from './alike.js';
import { firstWay } from './chain.js';
import { askedToday, type InSession, inSession, latestMarked } from './in-session.js';
import { inOrder } from './marked-sets.js';
import { adviceFor, isSideOpen, NOTHING_SAID, rowOf, sideIn, whereOf } from './pain-screen.js';
import { screenOf } from './screen-of.js';
import { markLeftOut } from './set-marks.js';
import type { SetToday } from './set-today.js';
import type { Mark, SetMark, Stepped, Told } from './told.js';
import { eased, type PainSoFar, type TrainingState } from './training-state.js';

export type PainAct = Extract<Act, { readonly act: 'sign' | 'where' | 'side' | 'degree' | 'heed' }>;

/** In a session it is said of the exercise in hand, while one rests of the one just done, before it of none. */
export function hurting(told: Told, state: TrainingState): TrainingState {
  const at = inSession(told, state);
  const inTraining = at !== null && state.view !== 'home' && at.stepped.status === 'under way';
  const row = inTraining ? handledIn(at) : null;
  const over = at !== null && row !== null && (state.stopped || openAlike(at, row).length === 0);
  return { ...state, view: 'pain', different: null, pain: { ...NOTHING_SAID, row, when: over ? 'after' : 'during' } };
}

/** What comes next was not done yet: nothing can hurt in it. A question names what it is about. */
function handledIn(at: InSession): RowId | null {
  const screen = screenOf(at.told, at.state);
  const done = latestMarked(at.today)?.item.row ?? null;
  switch (screen.kind) {
    case 'reserve':
      return screen.row;
    case 'set':
      return screen.rest === null ? screen.row : done;
    default:
      return done;
  }
}

export function stepPain(told: Told, state: TrainingState, act: PainAct): Stepped {
  const { pain } = state;
  const to = (next: TrainingState, ...marks: readonly Mark[]): Stepped => ({ state: next, marks });
  if (pain === null || state.view !== 'pain') return to(state);
  const at = inSession(told, state);
  const occurrence = at?.place.occurrence ?? nextOccurrence(told);
  const row = rowOf(pain);
  const inRow = row === null ? {} : { row };
  switch (act.act) {
    case 'sign': {
      if (pain.sign !== null) return to(state);
      if (act.sign === null) return to({ ...state, pain: { ...pain, none: true } });
      const report = { where: 'elsewhere', degree: 0, alarm: act.sign } as const;
      return to({ ...state, pain: { ...pain, sign: act.sign } }, { kind: 'pain', occurrence, ...inRow, report });
    }
    case 'where':
      if (pain.sign !== null || !pain.none || pain.where !== null) return to(state);
      return to({ ...state, pain: { ...pain, where: act.where, side: null } });
    case 'side':
      if (pain.sign !== null || !isSideOpen(pain) || pain.degree !== null) return to(state);
      return to({ ...state, pain: { ...pain, side: act.side } });
    case 'degree': {
      if (pain.sign !== null || pain.where === null || isSideOpen(pain) || pain.degree !== null) return to(state);
      const side = sideIn(pain);
      const report = { where: whereOf(pain), degree: act.degree, ...(side === undefined ? {} : { side }) };
      const said: Mark = { kind: 'pain', occurrence, ...inRow, report };
      const leaves = adviceFor(told.plan, act.degree) === 'leave' && at !== null && row !== null;
      const asked = { ...state, pain: { ...pain, degree: act.degree } };
      const left = leaves ? leaveSets(asked, openAlike(at, row)) : null;
      return to(asked, said, ...(left?.marks ?? []));
    }
    case 'heed':
      return heed(at, state, act.take, row);
  }
}

/**
 * Out of it as it was gone into, one question at a time, and then to where it was said; what was kept of an answer is taken back
 * with it. `null` where nothing was asked.
 */
export function backInPain(told: Told, state: TrainingState): Stepped | null {
  const { pain } = state;
  if (pain === null || state.view !== 'pain') return null;
  const to = (next: PainSoFar, marks: readonly Mark[] = []): Stepped => ({ state: { ...state, pain: next }, marks });
  const marks = inOrder(told.events);
  if (pain.sign !== null) {
    const said = marks.findLast((event) => event.kind === 'pain' && event.report.alarm === pain.sign);
    return to({ ...pain, sign: null }, takenBack(said));
  }
  if (pain.degree !== null) return to({ ...pain, degree: null }, degreeTakenBack(marks, pain));
  if (pain.side !== null) return to({ ...pain, side: null });
  if (pain.where !== null) return to({ ...pain, where: null });
  if (pain.none) return to({ ...pain, none: false });
  const view = state.occurrence === null ? 'home' : 'training';
  return notHurting(told, state, marks) ?? { state: { ...state, view, pain: null }, marks: [] };
}

const takenBack = (...said: readonly (LogEvent | undefined)[]): readonly Mark[] =>
  said.flatMap((event) => (event === undefined ? [] : [{ kind: 'void', event: event.id } as const]));

/** The report, and the sets that were left out because of it: nothing else is left out while it is asked of. */
function degreeTakenBack(marks: readonly LogEvent[], pain: PainSoFar): readonly Mark[] {
  const at = marks.findLastIndex(
    (event) => event.kind === 'pain' && event.report.alarm === undefined && event.report.degree === pain.degree,
  );
  if (at < 0) return [];
  const left = marks.slice(at + 1).filter((event) => event.kind === 'set' && event.done === 'left out');
  return takenBack(marks[at], ...left);
}

/** Said at the question before a session, and not meant: it is asked again. */
function notHurting(told: Told, state: TrainingState, marks: readonly LogEvent[]): Stepped | null {
  const at = inSession(told, state);
  if (at === null || state.pain?.when !== 'before' || askedToday(at) !== 'something hurts') return null;
  const { occurrence } = at.place;
  const said = marks.findLast((event) => event.kind === 'opened' && event.occurrence === occurrence);
  return { state: { ...state, view: 'training', pain: null }, marks: takenBack(said) };
}

/** The session that a pain said on the way in belongs to: the one that is next, else the last of all. */
function nextOccurrence({ plan, events, now }: Told): number {
  const { next, sessions } = stepSession(plan, inOrder(events), new Date(now));
  return next ?? sessions.at(-1)?.occurrence ?? 1;
}

type Take = Extract<PainAct, { readonly act: 'heed' }>['take'];

function heed(at: InSession | null, { pain, ...was }: TrainingState, take: Take, row: string | null): Stepped {
  const state: TrainingState = { ...was, pain: null, view: at === null ? 'home' : 'training' };
  const leaves = at !== null && (pain?.degree ?? 0) >= at.told.plan.pain.leave;
  if (at === null) return { state, marks: [] };
  if (take === 'stop') return { state: stopHere(at, state), marks: [] };
  if (row === null) return { state: heedBefore(at, state, take), marks: [] };
  if (take === 'leave' || leaves) return leaveSets(state, openAlike(at, row));
  return take === 'easier' ? easeRow(at, state, row) : { state, marks: [] };
}

/** With whatever is like it; what has no easier way left is not done. */
function easeRow(at: InSession, state: TrainingState, row: string): Stepped {
  const open = openAlike(at, row);
  const eased = open.filter(canBeEased(at));
  if (eased.length === 0) return { state, marks: [] };
  const ways = Object.fromEntries(eased.map(({ item }) => [item.row, firstWay(item, at.today.sore)]));
  return leaveSets(
    { ...state, easier: { ...state.easier, ...ways } },
    open.filter(({ item }) => ways[item.row] === undefined),
  );
}

/** Said of no exercise, it holds for all of the session: the easier way throughout, or not today. */
function heedBefore(at: InSession, state: TrainingState, take: Take): TrainingState {
  if (take === 'leave') return stopHere(at, state);
  return take === 'easier' ? eased(state) : state;
}

/** With nothing marked there is nothing to end: it waits for another day. */
export const stopHere = ({ today }: InSession, state: TrainingState): TrainingState => {
  const begun = latestMarked(today) !== null;
  return { ...state, view: begun ? 'training' : 'home', stopped: begun, inHand: null, more: [] };
};

/** Its sets still open. */
export const leaveRow = ({ today }: InSession, state: TrainingState, row: string): Stepped =>
  leaveSets(
    state,
    today.work.filter(({ item, stepped }) => item.row === row && stepped.marked === null),
  );

/** Those asked for beyond the plan are simply not done. */
function leaveSets(state: TrainingState, open: readonly SetToday[]): Stepped {
  const marks: readonly SetMark[] = open.filter(({ extra }) => extra !== true).map(markLeftOut);
  const beyond = new Set<string>(open.map(({ stepped }) => stepped.key));
  return { state: { ...state, more: state.more.filter((key) => !beyond.has(key)) }, marks };
}
