/** An act of the client → the marks it makes and the screen it leads to. Marks are stored first; only then does the screen change. */
import type { ClientItem, ClientSet } from '../../model/client-plan.js';
import { exerciseId, readSetKey, type SetKey, setKey } from '../../model/identity.js';
import type { PlanLoad } from '../../model/plan.js';
import type { Act } from '../../model/training.js';
import { adviceFor, NOTHING_SAID, rowOf, sideIn, whereOf } from './pain-screen.js';
import { openQuestion } from './questions.js';
import { inSession } from './screen-of.js';
import { type InSession, latestMarked, nextOpen } from './set-screen.js';
import type { SetToday } from './sets-today.js';
import type { Mark, SetMark, Told } from './told.js';
import { beginSession, openTraining, type TrainingState } from './training-state.js';

export interface Stepped {
  readonly state: TrainingState;
  /** In order; they are kept together or not at all. */
  readonly marks: readonly Mark[];
}

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
    case 'degree':
    case 'heed':
      return stepPain(told, state, act);
    case 'back':
      return to(goBack(state));
    default: {
      const at = inSession(told, state);
      return at === null ? to(state) : stepSet(at, act);
    }
  }
}

/** Out of a side question, to where it was asked. */
const goBack = (state: TrainingState): TrainingState => ({
  ...state,
  view: state.occurrence === null ? 'home' : 'training',
  different: null,
  pain: null,
});

function hurting(told: Told, state: TrainingState): TrainingState {
  const at = inSession(told, state);
  const next = at === null ? null : nextOpen(at.today);
  const row = at !== null && state.view !== 'home' ? (next?.item.row ?? null) : null;
  return { ...state, view: 'pain', different: null, pain: { ...NOTHING_SAID, row } };
}

type PainAct = Extract<Act, { readonly act: 'sign' | 'where' | 'degree' | 'heed' }>;

function stepPain(told: Told, state: TrainingState, act: PainAct): Stepped {
  const { pain } = state;
  const none: Stepped = { state, marks: [] };
  if (pain === null) return none;
  const at = inSession(told, state);
  const occurrence = at?.place.occurrence ?? nextOccurrence(told);
  const row = rowOf(pain);
  const inRow = row === null ? {} : { row };
  switch (act.act) {
    case 'sign': {
      if (act.sign === null) return { state: { ...state, pain: { ...pain, none: true } }, marks: [] };
      const report = { where: 'elsewhere', degree: 0, alarm: act.sign } as const;
      return {
        state: { ...state, pain: { ...pain, sign: act.sign } },
        marks: [{ kind: 'pain', occurrence, ...inRow, report }],
      };
    }
    case 'where':
      return { state: { ...state, pain: { ...pain, where: act.where, side: act.side ?? null } }, marks: [] };
    case 'degree': {
      if (pain.where === null || pain.degree !== null) return none;
      const side = sideIn(pain);
      const report = { where: whereOf(pain), degree: act.degree, ...(side === undefined ? {} : { side }) };
      const said: Mark = { kind: 'pain', occurrence, ...inRow, report };
      const leaves = adviceFor(told.plan, act.degree) === 'leave' && at !== null && row !== null;
      return {
        state: { ...state, pain: { ...pain, degree: act.degree } },
        marks: leaves ? [said, ...leftOut(at, row)] : [said],
      };
    }
    case 'heed':
      return heed(at, { ...state, pain: null, view: at === null ? 'home' : 'training' }, act.take, row);
  }
}

/** The session that a pain said on the way in belongs to: the one that is next, else the last. */
function nextOccurrence({ plan }: Told): number {
  return plan.weeks[0]?.sessions[0]?.occurrence ?? 1;
}

type Take = Extract<Act, { readonly act: 'heed' }>['take'];

function heed(at: InSession | null, state: TrainingState, take: Take, row: string | null): Stepped {
  const item = at?.today.work.find((one) => one.item.row === row)?.item;
  if (take === 'stop') return { state: { ...state, stopped: at !== null, inHand: null }, marks: [] };
  if (take === 'easier' && item !== undefined) {
    const first = item.easier.findIndex(({ set }) => set !== undefined);
    if (first >= 0) return { state: { ...state, easier: { ...state.easier, [item.row]: first } }, marks: [] };
  }
  if (take === 'leave' && at !== null && row !== null) return { state, marks: leftOut(at, row) };
  return { state, marks: [] };
}

const leftOut = ({ today }: InSession, row: string): readonly Mark[] =>
  today.work.filter(({ item, stepped }) => item.row === row && stepped.marked === null).map(leave);

const leave = ({ stepped, figures, tempo }: SetToday): SetMark => ({
  kind: 'set',
  key: stepped.key,
  exercise: exerciseId(figures.exercise),
  tempo,
  done: 'left out',
  asPlanned: false,
});

type SetAct = Exclude<
  Act,
  PainAct | { readonly act: 'home' | 'open' | 'send' | 'this phone' | 'passed' | 'set' | 'something hurts' | 'back' }
>;

function stepSet(at: InSession, act: SetAct): Stepped {
  const { state, today, told, place } = at;
  const { occurrence } = place;
  const training: TrainingState = { ...state, view: 'training', different: null };
  const to = (next: TrainingState, ...marks: readonly Mark[]): Stepped => ({ state: next, marks });
  const setOf = (key: SetKey): SetToday | undefined => today.work.find(({ stepped }) => stepped.key === key);
  switch (act.act) {
    case 'today': {
      if (isOpened(at)) return to(state);
      const less = act.today === 'not my best' || act.today === 'short of time';
      const opened: Mark = { kind: 'opened', occurrence, today: act.today };
      if (act.today === 'something hurts') return to({ ...state, view: 'pain', pain: NOTHING_SAID }, opened);
      return to({ ...state, view: less ? 'less' : 'training' }, opened);
    }
    case 'go':
      return to({ ...training, how: act.how });
    case 'around':
      return stepAround(at, training, act.done);
    case 'begin': {
      const next = nextOpen(today);
      if (next === null) return to(state);
      const inHand = { key: next.stepped.key, began: told.now };
      const leads = next.group.everySeconds !== undefined && state.clock?.row !== next.item.row;
      return to({ ...training, inHand, clock: leads ? { row: next.item.row, began: told.now } : state.clock });
    }
    case 'mark': {
      const set = setOf(act.key);
      if (set === undefined || set.stepped.marked !== null) return to(state);
      // A test is a number to be found: it is asked for, never taken for granted.
      if (set.figures.set.kind === 'test') return to({ ...state, view: 'different', different: act.key });
      return to({ ...training, inHand: null }, done(set, asPlanned(set.figures.set), true));
    }
    case 'different':
      return setOf(act.key) === undefined ? to(state) : to({ ...state, view: 'different', different: act.key });
    case 'say': {
      const set = setOf(act.key);
      if (set === undefined) return to(state);
      return to({ ...training, inHand: null }, done(set, said(set.figures.set, act.amount, act.load), false));
    }
    case 'leave out': {
      const set = setOf(act.key);
      return set === undefined ? to(state) : to({ ...training, inHand: null }, leave(set));
    }
    case 'leave exercise':
      return to({ ...training, inHand: null }, ...leftOut(at, act.row));
    case 'one more':
      return oneMore(at, training, act.row);
    case 'rub out':
      return to({ ...training, inHand: null }, ...takenBack(at, act.key));
    case 'longer rest':
      return longerRest(at, training, act.seconds);
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
      return to({ ...training, stopped: true, inHand: null });
    case 'effort':
      return close(at, act.effort);
  }
}

/** By what it says: an act comes back from the screen as a copy. */
const placeIn = ({ easier }: ClientItem, { exercise, say }: ClientItem['easier'][number]): number =>
  easier.findIndex((one) => one.exercise === exercise && one.say === say);

const isOpened = ({ marks, place }: InSession): boolean =>
  marks.some((event) => event.kind === 'opened' && event.occurrence === place.occurrence);

type Said = Pick<SetMark, 'reps' | 'seconds' | 'metres' | 'load'>;

/** One count and no more, the one that the set goes by. */
function asPlanned({ reps, seconds, metres, load }: ClientSet): Said {
  const held = load === undefined ? {} : { load };
  if (seconds !== undefined) return { seconds, ...held };
  if (metres !== undefined) return { metres, ...held };
  return reps === undefined ? held : { reps, ...held };
}

function said(set: ClientSet, amount: number, load: PlanLoad | undefined): Said {
  const held = load === undefined ? {} : { load };
  if (set.seconds !== undefined && set.kind !== 'test') return { seconds: amount, ...held };
  if (set.metres !== undefined) return { metres: amount, ...held };
  return set.seconds !== undefined && set.reps === undefined ? { seconds: amount, ...held } : { reps: amount, ...held };
}

const done = ({ stepped, figures, tempo }: SetToday, what: Said, planned: boolean): SetMark => ({
  kind: 'set',
  key: stepped.key,
  exercise: exerciseId(figures.exercise),
  tempo,
  done: figures.easier === undefined ? 'done' : 'easier',
  ...what,
  asPlanned: planned,
});

/** A warm-up or cool-down ticked whole, set by set where it has sets. */
function stepAround({ today, marks }: InSession, state: TrainingState, wasDone: boolean): Stepped {
  const begun = today.work.some(({ stepped }) => stepped.marked !== null);
  const cooling = begun || state.stopped;
  const groups = cooling ? today.coolDown : today.warmUp;
  const known = new Set<string>(marks.flatMap((event) => (event.kind === 'set' ? [event.key] : [])));
  const ticked = groups.flatMap(({ items }) =>
    items.flatMap((item) =>
      item.sets.flatMap((set): readonly SetMark[] => {
        if (known.has(set.key)) return [];
        const { key } = set;
        const exercise = set.exercise ?? item.exercise;
        return [{ kind: 'set', key, exercise, tempo: item.tempo, done: 'done', ...asPlanned(set), asPlanned: true }];
      }),
    ),
  );
  const next = cooling ? { ...state, cooledDown: true } : { ...state, warmedUp: true };
  return { state: next, marks: wasDone ? ticked : [] };
}

/** A set beyond the plan, like the last one of that exercise. */
function oneMore(at: InSession, state: TrainingState, row: string): Stepped {
  const { today, marks } = at;
  const like = today.work.findLast(({ item, stepped }) => item.row === row && stepped.set.kind === 'work');
  const parts = like === undefined ? null : readSetKey(like.stepped.key);
  if (like === undefined || parts === null) return { state, marks: [] };
  const ordinals = [...today.work.map(({ stepped }) => stepped.key), ...marks.flatMap(keysIn)].flatMap((key) => {
    const own = readSetKey(key);
    const same = own?.block === parts.block && own.occurrence === parts.occurrence && own.row === row;
    return own !== null && same && own.kind === parts.kind && own.side === parts.side ? [own.ordinal] : [];
  });
  const key = setKey({ ...parts, ordinal: Math.max(...ordinals) + 1 });
  return { state, marks: [{ ...done(like, asPlanned(like.figures.set), true), key, done: 'extra' }] };
}

const keysIn = (event: InSession['marks'][number]): readonly SetKey[] => (event.kind === 'set' ? [event.key] : []);

/** Every word on that set is taken back: the one before the last is not what was meant either. */
const takenBack = ({ marks }: InSession, key: SetKey): readonly Mark[] =>
  marks.flatMap((event) =>
    event.kind === 'set' && event.key === key ? [{ kind: 'void', event: event.id } as const] : [],
  );

function longerRest({ today }: InSession, state: TrainingState, seconds: number): Stepped {
  const after = latestMarked(today)?.stepped.key;
  if (after === undefined) return { state, marks: [] };
  const before = state.longer?.after === after ? state.longer.seconds : 0;
  return { state: { ...state, longer: { after, seconds: before + seconds } }, marks: [] };
}

function reserve(at: InSession, state: TrainingState, reps: number | null): Stepped {
  const question = openQuestion(at);
  if (question === null) return { state, marks: [] };
  const { row, side } = question.screen;
  if (reps === null) return { state: { ...state, passedBy: [...state.passedBy, question.name] }, marks: [] };
  const { occurrence } = at.place;
  return { state, marks: [{ kind: 'reserve', occurrence, row, side: side ?? 'both', reps }] };
}

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

/** Longer than any session lasts. */
const LONGEST = 240;
