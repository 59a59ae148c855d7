/** Which screen stands, from what is marked and what was chosen: the same for the same, on every device. */
import type {
  AroundScreen,
  DifferentScreen,
  FinishedScreen,
  LessScreen,
  LetBeScreen,
  Screen,
  SessionPlace,
  TodayScreen,
} from '../../model/training.js';
import { hasSets } from '../step-session.js';
import { canBeEased, openAlike } from './alike.js';
import { firstWay, waysOf } from './chain.js';
import { homeScreen, nextBut, unsentIn } from './home.js';
import { askedToday, type InSession, inSession, lastMarked, nextOpen } from './in-session.js';
import { inOrder } from './marked-sets.js';
import { morningScreen, soreBefore } from './next-morning.js';
import { painScreen, rowOf } from './pain-screen.js';
import { openQuestion } from './questions.js';
import { countOf, markedOf } from './set-marks.js';
import { setScreen } from './set-screen.js';
import type { SetToday } from './set-today.js';
import { isWork, placeAmong, type SessionToday, sessionToday } from './sets-today.js';
import type { Told } from './told.js';
import { isEased, type TrainingState } from './training-state.js';

export function screenOf(told: Told, state: TrainingState): Screen {
  const at = inSession(told, state);
  switch (state.view) {
    case 'send': {
      const sessions = unsentIn(told, inOrder(told.events));
      return { kind: 'send', sessions, text: told.message, passed: told.passedAt !== null && sessions === 0 };
    }
    case 'this phone': {
      const { settings, fault, persisted, events } = told;
      return { kind: 'this phone', settings, marks: events.length, persisted, fault };
    }
    case 'pain':
      return painOf(told, state, at);
    default:
      return at === null ? homeScreen(told, state) : sessionScreen(at);
  }
}

function painOf(told: Told, state: TrainingState, at: InSession | null): Screen {
  const { pain } = state;
  if (pain === null) return at === null ? homeScreen(told, state) : sessionScreen(at);
  const row = rowOf(pain);
  const own = at?.today.work.find((one) => one.item.row === row);
  const easierOpen =
    at !== null && (row === null ? !isEased(state) && isEasierOpen(at) : openAlike(at, row).some(canBeEased(at)));
  return painScreen(told.plan, pain, {
    place: at?.place ?? null,
    exercise: own?.figures.exercise ?? null,
    easierOpen,
    stops: at === null || (!state.stopped && nextOpen(at.today) !== null),
  });
}

function sessionScreen(at: InSession): Screen {
  const { state, told, stepped } = at;
  if (state.view === 'home') return homeScreen(told, state);
  if (stepped.status === 'closed') return state.view === 'finished' ? finishedScreen(at) : homeScreen(told, state);
  const different = state.view === 'different' ? differentScreen(at) : null;
  if (different !== null) return different;
  const easier = state.view === 'easier' ? easierScreen(at) : null;
  if (easier !== null) return easier;
  const today = askedToday(at);
  const morning = today === null ? morningScreen(at) : null;
  if (morning !== null) return morning;
  if (isNothingLeft(at)) return letBeScreen(at);
  if (today === null) return todayScreen(at);
  if (state.view === 'less' && (today === 'not my best' || today === 'short of time')) return lessScreen(at, today);
  return trainingScreen(at);
}

function todayScreen(at: InSession): TodayScreen {
  const sore = soreBefore(at);
  return { kind: 'today', place: at.place, ...(sore === null ? {} : { sore }), leftOut: leftOutOf(at) };
}

const letBeScreen = (at: InSession): LetBeScreen => ({
  kind: 'let be',
  place: at.place,
  leftOut: leftOutOf(at),
  next: nextBut(at.told, at.place.occurrence),
});

/** Whether it waits or was planned away; a session of nothing but a warm-up is whole as it is. */
export const isNothingLeft = (at: InSession): boolean =>
  !hasSets(at.stepped) && at.today.session.groups.some(isWork) && wholeOf(at).length === 0;

function leftOutOf({ told, state, today, place }: InSession): TodayScreen['leftOut'] {
  const again = told.replanned
    .filter((one) => one.occurrence === place.occurrence && one.today === null)
    .map(({ exercise, because }) => ({ exercise, because }));
  const kept = today.keptOut.map(({ row: _, exercise, ...hurt }) => ({ exercise, because: [], hurt }));
  const waits = new Set(today.keptOut.map(({ row }) => row));
  // Why was said a moment ago.
  const sore = today.session.groups
    .flatMap(({ items }) => items)
    .filter(({ row }) => state.leave.includes(row) && !waits.has(row))
    .map(({ exercise }) => ({ exercise, because: [] }));
  return [...again, ...kept, ...sore];
}

/** Warm-up, then set by set with the questions between them, then cool-down, then the effort of it all. */
function trainingScreen(at: InSession): Screen {
  const { state, place, today } = at;
  const begun = today.work.some(({ stepped }) => stepped.marked !== null);
  if (!begun && !state.warmedUp && !state.stopped && today.warmUp.length > 0)
    return around('warm-up', place, today.warmUp, leftOutOf(at));
  const question = openQuestion(at);
  if (question !== null && !state.stopped) return question.screen;
  const next = state.stopped ? null : nextOpen(today);
  if (next !== null) return setScreen(at, next);
  if (!state.cooledDown && begun && today.coolDown.length > 0) return around('cool-down', place, today.coolDown, []);
  return { kind: 'effort', place, open: openSets(today), last: lastMarked(today) };
}

/** Of the plan: what was to be done beyond it is not missed. */
const openSets = ({ work }: SessionToday): number =>
  work.filter(({ stepped, extra }) => stepped.marked === null && extra !== true).length;

function around(
  kind: AroundScreen['kind'],
  place: SessionPlace,
  groups: SessionToday['warmUp'],
  leftOut: AroundScreen['leftOut'],
): AroundScreen {
  const minutes = groups.reduce((sum, group) => sum + (group.minutes ?? 0), 0);
  return { kind, place, minutes: minutes === 0 ? null : minutes, items: groups.flatMap(({ items }) => items), leftOut };
}

function lessScreen(at: InSession, because: LessScreen['because']): LessScreen {
  const { short, groups } = at.today.session;
  const whole = wholeOf(at);
  const isShort = ({ stepped }: SetToday): boolean => short.sets.includes(stepped.key);
  const rows = new Set(whole.filter(isShort).map(({ item }) => item.row));
  const planned = groups.filter(isWork).flatMap(({ items }) => items);
  const isAll = planned.every(({ row, sets }) => rows.has(row) || !sets.some(({ key }) => short.sets.includes(key)));
  return {
    kind: 'less',
    place: at.place,
    because,
    short:
      rows.size === 0 || whole.every(isShort) ? null : { minutes: isAll ? short.minutes : null, exercises: rows.size },
    easierThroughout: isEasierOpen(at),
  };
}

/** Its work as planned, whatever was chosen of it today. */
const wholeOf = ({ told, state, marks, stepped }: InSession): SessionToday['work'] =>
  sessionToday(told, { ...state, how: 'as planned', easier: {}, more: [] }, marks, stepped)?.work ?? [];

/** Is an easier way open for every exercise of it? */
function isEasierOpen(at: InSession): boolean {
  const work = wholeOf(at);
  return work.length > 0 && work.every(({ item }) => firstWay(item, at.today.sore) >= 0);
}

function differentScreen({ state, place, today }: InSession): DifferentScreen | null {
  const set = today.work.find(({ stepped }) => stepped.key === state.different);
  if (set === undefined) return null;
  return {
    kind: 'different',
    place,
    key: set.stepped.key,
    number: placeAmong(today.work, set).number,
    figures: set.figures,
    loads: set.item.loads ?? [],
    counts: countOf(set),
    marked: markedOf(set),
  };
}

function easierScreen({ place, today }: InSession): Screen | null {
  const next = nextOpen(today);
  const options = next === null ? [] : waysOf(next.item, today.sore);
  if (next === null || options.length === 0) return null;
  return {
    kind: 'easier',
    place,
    row: next.item.row,
    exercise: next.item.exercise,
    options,
    chosen: next.chosen,
  };
}

function finishedScreen(at: InSession): FinishedScreen {
  const { told, state, place } = at;
  const { next } = homeScreen(told, { ...state, view: 'home' });
  const whole = wholeOf(at).every(
    ({ stepped: { marked, set }, extra }) =>
      extra === true || set.optional === true || (marked !== null && marked.done !== 'left out'),
  );
  return { kind: 'finished', place, whole, next };
}
