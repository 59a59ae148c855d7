/** Which screen stands, from what is marked and what was chosen: the same for the same, on every device. */
import type {
  AroundScreen,
  DifferentScreen,
  FinishedScreen,
  LessScreen,
  Screen,
  SessionPlace,
} from '../../model/training.js';
import { type SteppedSession, stepSession } from '../step-session.js';
import { alarmsIn, closedIn, homeScreen, placeOf, unsentIn } from './home.js';
import { inOrder } from './marked-sets.js';
import { painScreen, rowOf } from './pain-screen.js';
import { openQuestion } from './questions.js';
import { type InSession, nextOpen, setScreen } from './set-screen.js';
import { chosenEasier, likeIt, type SessionToday, sessionToday } from './sets-today.js';
import type { Told } from './told.js';
import type { TrainingState } from './training-state.js';

export function screenOf(told: Told, state: TrainingState): Screen {
  const at = inSession(told, state);
  switch (state.view) {
    case 'send':
      return {
        kind: 'send',
        sessions: unsentIn(told, inOrder(told.events)),
        text: told.message,
        passed: wasPassed(told),
      };
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

const wasPassed = (told: Told): boolean => told.passedAt !== null && unsentIn(told, inOrder(told.events)) === 0;

/** The session in hand; `null` where none is, or it is not to be gone on with. */
export function inSession(told: Told, state: TrainingState): InSession | null {
  if (state.occurrence === null || told.standing !== 'stands') return null;
  const marks = inOrder(told.events);
  const { sessions } = stepSession(told.plan, marks, new Date(told.now));
  const place = placeOf(told.plan, state.occurrence, closedIn(sessions));
  const today = sessionToday(told, state, marks, state.occurrence);
  if (place === null || today === null) return null;
  if (alarmsIn(told.plan, marks).length > 0 && state.view !== 'pain') return null;
  return { told, state, marks, place, today };
}

const steppedOf = ({ told, marks, place }: InSession): SteppedSession | undefined =>
  stepSession(told.plan, marks, new Date(told.now)).sessions.find(({ occurrence }) => occurrence === place.occurrence);

function painOf(told: Told, state: TrainingState, at: InSession | null): Screen {
  const { pain } = state;
  if (pain === null) return at === null ? homeScreen(told, state) : sessionScreen(at);
  const row = rowOf(pain);
  const item = at?.today.work.find((one) => one.item.row === row)?.item;
  const open = item?.easier.some(({ set }) => set !== undefined) === true;
  return painScreen(told.plan, at?.place ?? null, pain, open);
}

function sessionScreen(at: InSession): Screen {
  const { state, place, told } = at;
  const stepped = steppedOf(at);
  if (state.view === 'home') return homeScreen(told, state);
  if (stepped === undefined || stepped.status === 'closed')
    return state.view === 'finished' ? finishedScreen(at) : homeScreen(told, state);
  const different = state.view === 'different' ? differentScreen(at) : null;
  if (different !== null) return different;
  const easier = state.view === 'easier' ? easierScreen(at) : null;
  if (easier !== null) return easier;
  if (stepped.today === null) return { kind: 'today', place };
  if (state.view === 'less' && (stepped.today === 'not my best' || stepped.today === 'short of time'))
    return lessScreen(at, stepped.today);
  return trainingScreen(at);
}

/** Warm-up, then set by set with the questions between them, then cool-down, then the effort of it all. */
function trainingScreen(at: InSession): Screen {
  const { state, place, today } = at;
  const begun = today.work.some(({ stepped }) => stepped.marked !== null);
  if (!begun && !state.warmedUp && !state.stopped && today.warmUp.length > 0)
    return around('warm-up', place, today.warmUp);
  const question = openQuestion(at);
  if (question !== null && !state.stopped) return question.screen;
  const next = state.stopped ? null : nextOpen(today);
  if (next !== null) return setScreen(at, next);
  if (!state.cooledDown && begun && today.coolDown.length > 0) return around('cool-down', place, today.coolDown);
  return { kind: 'effort', place, open: openSets(today) };
}

const openSets = ({ work }: SessionToday): number => work.filter(({ stepped }) => stepped.marked === null).length;

function around(kind: AroundScreen['kind'], place: SessionPlace, groups: SessionToday['warmUp']): AroundScreen {
  const minutes = groups.reduce((sum, group) => sum + (group.minutes ?? 0), 0);
  return { kind, place, minutes: minutes === 0 ? null : minutes, items: groups.flatMap(({ items }) => items) };
}

function lessScreen({ place, today, told, state, marks }: InSession, because: LessScreen['because']): LessScreen {
  const { short } = today.session;
  const all = sessionToday(told, { ...state, how: 'as planned' }, marks, place.occurrence)?.work ?? [];
  const inShort = all.filter(({ stepped }) => short.sets.includes(stepped.key));
  const rows = new Set(inShort.map(({ item }) => item.row));
  return {
    kind: 'less',
    place,
    because,
    short: rows.size === 0 ? null : { minutes: short.minutes, exercises: rows.size },
    easierThroughout: all.length > 0 && all.every(({ item }) => item.easier.some(({ set }) => set !== undefined)),
  };
}

function differentScreen({ state, place, today }: InSession): DifferentScreen | null {
  const set = today.work.find(({ stepped }) => stepped.key === state.different);
  if (set === undefined) return null;
  const { figures, item, stepped } = set;
  const counts = figures.set.seconds !== undefined ? 'seconds' : figures.set.metres !== undefined ? 'metres' : 'reps';
  const said = stepped.marked?.[counts];
  const load = stepped.marked === null ? figures.set.load : stepped.marked.load;
  return {
    kind: 'different',
    place,
    key: stepped.key,
    number: likeIt(today.work, set).indexOf(set) + 1,
    figures,
    loads: item.loads ?? [],
    counts,
    marked: { amount: said ?? figures.set[counts] ?? 0, ...(load === undefined ? {} : { load }) },
  };
}

function easierScreen({ state, place, today }: InSession): Screen | null {
  const next = nextOpen(today);
  if (next === null || next.item.easier.length === 0) return null;
  return {
    kind: 'easier',
    place,
    row: next.item.row,
    options: next.item.easier,
    chosen: chosenEasier(state, next.item),
  };
}

function finishedScreen({ told, state, place, today, marks }: InSession): FinishedScreen {
  const { next } = homeScreen(told, { ...state, view: 'home' });
  const asPlanned = sessionToday(told, { ...state, how: 'as planned', easier: {} }, marks, place.occurrence) ?? today;
  return { kind: 'finished', place, whole: openSets(asPlanned) === 0, next };
}
