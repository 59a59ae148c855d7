/** An act of the client → the marks it makes and the screen it leads to. Marks are stored first; only then does the screen change. */
import type { ClientItem } from '../../model/client-plan.js';
import type { SetKey } from '../../model/identity.js';
import type { Act } from '../../model/training.js';
import { clockName, clockOf, restOf } from './clocks.js';
import { keysOfOneMore } from './extra-sets.js';
import { askedToday, type InSession, inSession, latestMarked, nextOpen } from './in-session.js';
import { answerMorning } from './next-morning.js';
import { NOTHING_SAID } from './pain-screen.js';
import { openQuestion } from './questions.js';
import { isNothingLeft, screenOf } from './screen-of.js';
import { markAsPlanned, markAsSaid, markLeftOut } from './set-marks.js';
import type { SetToday } from './set-today.js';
import { isWork } from './sets-today.js';
import { backInPain, hurting, leaveRow, type PainAct, stepPain, stopHere } from './step-pain.js';
import type { Mark, SetMark, Stepped, Told } from './told.js';
import { beginSession, eased, isEased, openTraining, type TrainingState } from './training-state.js';

/** An act that does not fit what stands, of a screen that has changed meanwhile, changes nothing. */
export function stepTraining(told: Told, state: TrainingState, act: Act): Stepped {
  const to = (next: TrainingState, ...marks: readonly Mark[]): Stepped => ({ state: next, marks });
  switch (act.act) {
    case 'home':
      return to({ ...state, view: 'home', different: null, pain: null });
    case 'open':
      return to({ ...beginSession(state, act.occurrence), view: 'training' });
    case 'send':
      return to({ ...state, view: 'send' });
    case 'this phone':
      return to({ ...state, view: 'this phone' });
    case 'passed':
    case 'set':
      return to(state);
    case 'something hurts':
      return to(hurting(told, state));
    case 'sign':
    case 'where':
    case 'side':
    case 'degree':
    case 'heed':
      return stepPain(told, state, act);
    case 'back':
      return backInPain(told, state) ?? to(goBack(state));
    default: {
      const at = inSession(told, state);
      return at === null || at.stepped.status === 'closed' ? to(state) : stepSet(at, act);
    }
  }
}

/** Out of a side question, to where it was asked; a session that was stopped goes on. */
const goBack = (state: TrainingState): TrainingState => ({
  ...state,
  view: state.occurrence === null ? 'home' : 'training',
  stopped: false,
  different: null,
  pain: null,
});

type SetAct = Exclude<
  Act,
  PainAct | { readonly act: 'home' | 'open' | 'send' | 'this phone' | 'passed' | 'set' | 'something hurts' | 'back' }
>;

function stepSet(at: InSession, act: SetAct): Stepped {
  const { state, today } = at;
  const training: TrainingState = { ...state, view: 'training', different: null };
  const to = (next: TrainingState, ...marks: readonly Mark[]): Stepped => ({ state: next, marks });
  const setOf = (key: SetKey): SetToday | undefined => today.work.find(({ stepped }) => stepped.key === key);
  switch (act.act) {
    case 'morning':
      return askedToday(at) === null ? answerMorning(at, act.worse) : to(state);
    case 'today':
      return sayToday(at, act.today);
    case 'let be':
      return isNothingLeft(at) ? letBe(at) : to(state);
    case 'go':
      // A short version without a set would be no session.
      if (act.how === 'short' && today.session.short.sets.length === 0) return to(training);
      // What was worse in the morning is done the easier way in the short version as well.
      return to(
        act.how === 'short' && isEased(state) ? eased({ ...training, how: 'short' }) : { ...training, how: act.how },
      );
    case 'around':
      return stepAround(at, training, act.done);
    case 'begin':
      return to(begin(at, training));
    case 'start again':
      return to({ ...training, inHand: null });
    case 'mark': {
      const set = setOf(act.key);
      if (set === undefined || set.stepped.marked !== null) return to(state);
      // A test is a number to be found: it is asked for, never taken for granted.
      if (set.figures.set.kind === 'test') return to({ ...state, view: 'different', different: act.key });
      return keep(at, training, set, markAsPlanned(set));
    }
    case 'different':
      return setOf(act.key) === undefined ? to(state) : to({ ...state, view: 'different', different: act.key });
    case 'say': {
      const set = setOf(act.key);
      return set === undefined ? to(state) : keep(at, training, set, markAsSaid(set, act.amount, act.load));
    }
    case 'leave out': {
      const set = setOf(act.key);
      if (set === undefined) return to(state);
      // One beyond the plan that is left out is as if nobody had asked for it.
      return set.extra === true ? to(without(training, act.key), ...takenBack(at, act.key)) : leaveOut(training, set);
    }
    case 'leave exercise':
      return leaveRow(at, { ...training, inHand: null }, act.row);
    case 'one more':
      return to({ ...training, more: [...state.more, ...moreOf(at, act.row)] });
    case 'rub out':
      return to({ ...training, inHand: null, rested: null }, ...takenBack(at, act.key));
    case 'longer rest':
      return to(longerRest(at, training, act.seconds));
    case 'easier':
      return to({ ...state, view: 'easier' });
    case 'choose easier': {
      const item = nextOpen(today)?.item;
      if (item === undefined) return to(training);
      const index = act.easier === null ? -1 : placeIn(item, act.easier);
      return to({ ...training, easier: { ...state.easier, [item.row]: index } });
    }
    case 'reserve':
      return reserve(at, training, act.reps);
    case 'stop here':
      return to(stopHere(at, training));
    case 'effort':
      // A late tap of another screen closes nothing.
      return screenOf(at.told, state).kind === 'effort' ? close(at, act.effort) : to(state);
  }
}

function sayToday(at: InSession, today: Extract<SetAct, { readonly act: 'today' }>['today']): Stepped {
  const { state, place } = at;
  if (askedToday(at) !== null) return { state, marks: [] };
  const opened: Mark = { kind: 'opened', occurrence: place.occurrence, today };
  if (today === 'something hurts') return { state: { ...state, view: 'pain', pain: NOTHING_SAID }, marks: [opened] };
  const less = today === 'not my best' || today === 'short of time';
  return { state: { ...state, view: less ? 'less' : 'training' }, marks: [opened] };
}

/** A set is marked: rest is told from here, but for one that was marked before and is only told otherwise now. */
function keep({ told }: InSession, state: TrainingState, set: SetToday, mark: SetMark): Stepped {
  const { key } = set.stepped;
  const rested = set.first === null ? { key, began: told.now } : state.rested;
  return { state: { ...without(state, key), inHand: null, rested }, marks: [mark] };
}

const without = (state: TrainingState, key: string): TrainingState => ({
  ...state,
  more: state.more.filter((one) => one !== key),
});

const leaveOut = (state: TrainingState, set: SetToday): Stepped => ({
  state: { ...state, inHand: null },
  marks: set.stepped.marked?.done === 'left out' ? [] : [markLeftOut(set)],
});

/** The set in hand, and the clock of its group where that does not run yet. */
function begin(at: InSession, state: TrainingState): TrainingState {
  const { told, today } = at;
  const next = nextOpen(today);
  if (next === null) return state;
  const clock = clockOf(at, next, null);
  const leads = clock.kind === 'every' && clock.began === null;
  return {
    ...state,
    inHand: { key: next.stepped.key, began: told.now },
    clock: leads ? { row: clockName(next), began: told.now } : state.clock,
  };
}

/** By what it says: an act comes back from the screen as a copy. */
const placeIn = ({ easier }: ClientItem, { exercise, say }: ClientItem['easier'][number]): number =>
  easier.findIndex((one) => one.exercise === exercise && one.say === say);

/** A warm-up or cool-down ticked whole, set by set where it has sets. */
function stepAround({ today, marks }: InSession, state: TrainingState, wasDone: boolean): Stepped {
  const begun = latestMarked(today) !== null;
  const cooling = begun && !state.cooledDown && (state.stopped || nextOpen(today) === null);
  if (!cooling && (begun || state.warmedUp)) return { state, marks: [] };
  const groups = cooling ? today.coolDown : today.warmUp;
  const known = new Set<string>(marks.flatMap((event) => (event.kind === 'set' ? [event.key] : [])));
  const ticked = groups.flatMap(({ items }) =>
    items.flatMap((item) =>
      item.sets.flatMap(({ key, exercise, ...set }): readonly SetMark[] => {
        if (known.has(key)) return [];
        const count = (['seconds', 'metres', 'reps'] as const).find((one) => set[one] !== undefined);
        const what = count === undefined ? {} : { [count]: set[count] };
        const held = set.load === undefined ? {} : { load: set.load };
        const head = { kind: 'set', key, exercise: exercise ?? item.exercise, tempo: item.tempo } as const;
        return [{ ...head, done: 'done', ...what, ...held, asPlanned: true }];
      }),
    ),
  );
  const next = cooling ? { ...state, cooledDown: true } : { ...state, warmedUp: true };
  return { state: next, marks: wasDone ? ticked : [] };
}

/** One at a time: who has asked for one more has it still to do. */
const moreOf = ({ today, marks, state }: InSession, row: string): readonly SetKey[] =>
  today.work.some(({ stepped }) => stepped.row === row && state.more.includes(stepped.key))
    ? []
    : keysOfOneMore(today.work, marks, row);

/** Every word on that set is taken back: the one before the last is not what was meant either. */
const takenBack = ({ marks }: InSession, key: SetKey): readonly Mark[] =>
  marks.flatMap((event) =>
    event.kind === 'set' && event.key === key ? [{ kind: 'void', event: event.id } as const] : [],
  );

/** From now on where it is over: who asks for more then is not to be given what has gone by. */
function longerRest(at: InSession, state: TrainingState, seconds: number): TrainingState {
  const { told, today } = at;
  const after = latestMarked(today)?.stepped.key;
  const next = nextOpen(today);
  if (after === undefined || next === null) return state;
  const before = state.longer?.after === after ? state.longer.seconds : 0;
  const goneBy = Math.max(0, told.now - (restOf(at, next)?.over ?? told.now)) / 1000;
  return { ...state, longer: { after, seconds: before + goneBy + seconds } };
}

function reserve(at: InSession, state: TrainingState, reps: number | null): Stepped {
  const question = openQuestion(at);
  if (question === null) return { state, marks: [] };
  const { row, side } = question.screen;
  if (reps === null) return { state: { ...state, passedBy: [...state.passedBy, question.name] }, marks: [] };
  const { occurrence } = at.place;
  return { state, marks: [{ kind: 'reserve', occurrence, row, side: side ?? 'both', reps }] };
}

/**
 * Every set of its work is left out, which tells it from a session done and not marked set by set; without effort or minutes,
 * since there were none.
 */
function letBe({ place, stepped, today }: InSession): Stepped {
  const items = today.session.groups.filter(isWork).flatMap((group) => group.items);
  const left = items.flatMap(({ row, tempo }) =>
    stepped.sets
      .filter((set) => set.row === row)
      .map(({ key, exercise }): SetMark => {
        return { kind: 'set', key, exercise, tempo, done: 'left out', asPlanned: false };
      }),
  );
  return { state: openTraining(), marks: [...left, { kind: 'closed', occurrence: place.occurrence }] };
}

/** Longer than any session lasts, in minutes. */
const LONGEST = 240;

/** Whole minutes from its first mark; not told where it lay half a day. */
function close({ place, marks, told, state, today }: InSession, effort: number | null): Stepped {
  const { occurrence } = place;
  const own = new Set<string>(today.work.map(({ stepped }) => stepped.key));
  const first = marks.find((event) => event.kind === 'set' && own.has(event.key));
  const minutes = first === undefined ? 0 : Math.round((told.now - Date.parse(first.at)) / 60_000);
  const lasted = minutes >= 1 && minutes <= LONGEST ? { minutes } : {};
  const closed: Mark = { kind: 'closed', occurrence, ...(effort === null ? {} : { effort }), ...lasted };
  return { state: { ...openTraining(), occurrence: state.occurrence, view: 'finished' }, marks: [closed] };
}
