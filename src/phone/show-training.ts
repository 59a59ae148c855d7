/**
 * Puts the training screens beside the book. A tap becomes marks; they are kept; only then does the screen change, so that
 * a stroke that is seen is a stroke that is there. Clocks are read, never counted.
 */
import { h, render } from 'preact';
import { lastsFor } from '../../layouts/training/clock.js';
import { ScreenView } from '../../layouts/training/screen.js';
import type { Shown } from '../../layouts/training/shown.js';
import type { ClientPlan } from '../model/client-plan.js';
import type { IsoDate } from '../model/day.js';
import type { LogEvent } from '../model/log.js';
import type { Act, Moment, Screen, SessionPlace } from '../model/training.js';
import { finish, type InSteps } from '../session/in-steps.js';
import type { ReplannedItem } from '../session/replan.js';
import { afterPutBack } from '../session/training/clocks.js';
import { comeBack } from '../session/training/come-back.js';
import { isLighter } from '../session/training/lighter.js';
import { screenOf } from '../session/training/screen-of.js';
import { stepTraining } from '../session/training/step-training.js';
import type { Told } from '../session/training/told.js';
import { readTrainingState, type TrainingState } from '../session/training/training-state.js';
import { weekTallies } from '../session/training/week-tallies.js';
import type { PhoneSpeech } from '../words/phone-speech.js';
import { sayClientLoad, sayClientSet, sayClientSetAloud } from '../words/say-client-set.js';
import { buildTraining, HERE, makeRoomForBar } from './build-training.js';
import { finishInTurn, nextTask } from './give-way.js';
import type { Keep } from './keep/keep.js';
import { localMoment } from './keep/stamp-marks.js';
import { readFilm } from './read-film.js';
import {
  headingOf,
  nameOf,
  readAround,
  readChanges,
  readEmergency,
  readExerciseLanguage,
  readMovements,
  readTurn,
  sessionLeafId,
} from './read-leaf.js';
import { outgoingTo } from './seal-for-studio.js';
import { copyText, fileNameOf, messageOf, type Passed, passOn, saveText } from './send-marks.js';
import { showWeek } from './show-week.js';
import { allowSound, keepAwake, signalBeat, signalEnd } from './signals.js';
import { steadyTaps } from './steady-taps.js';
import { watchClock } from './watch-clock.js';

type Replan = InSteps<readonly ReplannedItem[]>;

export interface Training {
  readonly book: HTMLElement;
  readonly plan: ClientPlan;
  readonly keep: Keep;
  readonly speech: PhoneSpeech;
  /** `null` where the plan stays as it is. */
  readonly planAgain: ((events: readonly LogEvent[], now: Moment, today: IsoDate) => Replan) | null;
}

/** Two taps within so many milliseconds were meant as one. */
const ONE_TAP_MS = 600;

const localDay = (now: Date): IsoDate => localMoment(now).slice(0, 10);

export async function showTraining({ book, plan, keep, speech, planAgain }: Training): Promise<void> {
  let replanned: readonly ReplannedItem[] = [];
  const againNow = (): Replan | undefined => {
    const now = new Date();
    return planAgain?.(keep.events(), now.getTime(), localDay(now));
  };
  const planRest = (): void => {
    const again = againNow();
    replanned = again === undefined ? [] : finish(again);
  };
  const atFirst = againNow();
  if (atFirst !== undefined) replanned = await finishInTurn(atFirst);
  const { phone } = speech.words;
  const emergency = readEmergency();
  const exerciseLanguage = readExerciseLanguage();
  const movement = readMovements();
  const outgoing = outgoingTo(plan.marksTo);

  let state: TrainingState = readTrainingState(keep.kept().state);
  let persisted: boolean | null = null;
  let passed: Passed | null = null;
  let storing = false;
  let lastTap = Number.NEGATIVE_INFINITY;
  let shownKind = '';

  const told = (): Told => {
    const now = new Date();
    const { settings, seenEdition, passedAt } = keep.kept();
    const events = keep.events();
    return {
      plan,
      replanned,
      events,
      now: now.getTime(),
      today: localDay(now),
      settings,
      fault: keep.fault(),
      persisted,
      standing: plan.standing,
      seenEdition,
      passedAt,
      message: state.view === 'send' ? messageOf({ plan, device: keep.device(), events, passedAt }) : '',
    };
  };

  state = comeBack(told(), state);
  await nextTask();
  // What leads to the screens is called by the one that stands first; sought here, before anything of them is to be seen.
  const first = screenOf(told(), state);
  await nextTask();
  // From here on all in one go: nothing is to be seen that is not whole.
  const { root, mount, status, wayIn, wayBack } = buildTraining(book, phone.trainingTitle);
  const makeRoom = makeRoomForBar(root, mount);

  const isOn = (): boolean => location.hash === HERE;
  const units = () => keep.kept().settings.units;
  const titleOf = (place: SessionPlace): string => headingOf(sessionLeafId(plan, place)) || place.name;

  /** Said once to whoever listens: the same words twice would be heard once. */
  const announce = (words: string): void => {
    status.textContent = words;
  };

  const pass = (how: 'pass' | 'copy' | 'save'): void => {
    const { events } = told();
    const text = messageOf({
      plan,
      device: keep.device(),
      events,
      passedAt: how === 'save' ? null : keep.kept().passedAt,
    });
    if (text === '') return;
    const name = fileNameOf(localDay(new Date()));
    const go = (out: string): Promise<Passed> =>
      how === 'save' ? Promise.resolve(saveText(out, name)) : how === 'copy' ? copyText(out) : passOn(out, name);
    const out = outgoing.of(text);
    // Waits for nothing where it is ready.
    const going = typeof out === 'string' ? go(out) : out.then(go);
    going.then(
      async (came) => {
        passed = came;
        if (came !== 'not passed') await keep.put({ passedAt: Date.now() });
        draw();
      },
      () => {
        passed = 'not passed';
        draw();
      },
    );
  };

  const shown = (now: Moment, screen: Screen): Shown => ({
    speech,
    act: (one) => {
      act(one).catch(() => undefined);
    },
    now,
    counting: keep.kept().settings.tempo,
    dose: (set) => sayClientSet(set, units(), speech),
    aloud: (set) => sayClientSetAloud(set, units(), speech),
    load: (load) => sayClientLoad(load, units(), speech),
    nameOf,
    exerciseLanguage,
    movement,
    leaf: (place, row, exercise) => readTurn(plan, place, row, exercise),
    around: (place, which) => readAround(plan, place, which),
    sessionTitle: titleOf,
    film: ({ occurrence }) => readFilm(plan, occurrence),
    changes: readChanges(),
    emergency,
    passed,
    pass,
    draft: plan.bookletId === undefined,
    sealed: plan.marksTo !== undefined,
    lighter: screen.kind === 'home' && isLighter(replanned, screen.next?.occurrence ?? null),
  });

  function draw(): Screen {
    const now = told();
    const screen = screenOf(now, state);
    const kind = screen.kind === 'pain' ? `pain ${screen.step.at}` : screen.kind;
    if (screen.kind === 'send') outgoing.prepare(screen.text);
    render(h(ScreenView, { screen, shown: shown(now.now, screen) }), mount);
    makeRoom();
    root.classList.toggle('left-hand', now.settings.leftHand);
    if (kind !== shownKind && isOn()) toTop();
    shownKind = kind;
    showWays(screen);
    keepAwake(isOn() && now.settings.awake && isUnderWay(screen)).catch(() => undefined);
    return screen;
  }

  /** From the question before a session to the one after it. */
  const isUnderWay = ({ kind }: Screen): boolean =>
    state.occurrence !== null && !['home', 'finished', 'send', 'this phone'].includes(kind);

  function toTop(): void {
    scrollTo(0, 0);
    mount.querySelector<HTMLElement>('h2')?.focus({ preventScroll: true });
  }

  /** In from the cover, and back from any leaf while a session is in hand. */
  function showWays(screen: Screen): void {
    wayBack.hidden = isOn() || !isUnderWay(screen);
    wayBack.textContent = phone.toTraining;
    const next = screen.kind === 'home' ? screen.next : null;
    wayIn.textContent = next === null ? phone.toTraining : phone.startSession(titleOf(next));
  }

  /** Beside the exercises of the week that stands open, or is about to. */
  function showTallies(leaf: Element | null): void {
    // Called `week-2`.
    if (leaf !== null) showWeek(leaf, plan, weekTallies(told(), state, Number(leaf.id.slice(5))), speech);
  }
  const showOpenWeek = (): void => showTallies(book.querySelector('.leaf.week:not([hidden])'));

  async function act(one: Act): Promise<void> {
    const at = performance.now();
    // On every screen: the second of two would else answer a question that nobody has read yet.
    if (storing || at - lastTap < ONE_TAP_MS) return;
    lastTap = at;
    allowSound(keep.kept().settings);
    if (one.act === 'set') {
      await keep.put({ settings: one.settings });
      draw();
      return;
    }
    if (one.act === 'open' || (one.act === 'mark' && state.view === 'home')) {
      planRest();
      await keep.put({ seenEdition: plan.edition });
    }
    const before = told();
    const { state: next, marks } = stepTraining(before, state, one);
    if (marks.length > 0) {
      storing = true;
      const kept = await keep.add(marks, next);
      storing = false;
      if (!kept) {
        state = { ...state, view: 'home' };
        draw();
        return;
      }
    }
    state = next;
    if (one.act !== 'send') passed = null;
    if (marks.length === 0) keep.put({ state }).catch(() => undefined);
    if (one.act === 'morning') planRest();
    if (one.act === 'effort') {
      planRest();
      // Once, when there is something to keep: some browsers put the question to whoever holds the phone.
      if (keep.events().filter(({ kind }) => kind === 'closed').length === 1) persisted = await keep.persist();
    }
    tellOf(one, draw());
    // Where keeping took long, the second of two comes as late: it was meant for what stood there before.
    lastTap = performance.now();
  }

  /** What a mark came to, in one polite sentence. */
  function tellOf(one: Act, screen: Screen): void {
    if (one.act === 'rub out') announce(screen.kind === 'set' ? phone.rubbedOut(screen.number) : '');
    else if (one.act === 'begin' && screen.kind === 'set' && screen.clock.kind === 'timed')
      announce(phone.intoPlaceIn(plan.phone.intoPlace));
    else if (one.act === 'mark') announce(screen.kind === 'set' ? tellMark(screen) : '');
  }

  function tellMark({ last, rest }: Extract<Screen, { readonly kind: 'set' }>): string {
    if (last === null) return '';
    if (rest === null) return phone.markedOnly(last.number);
    return phone.marked(last.number, Math.round((rest.over - rest.began) / 1000));
  }

  /** What an end comes to, by sound and in one polite sentence. */
  function tellEnd(over: Moment): void {
    signalEnd(keep.kept().settings);
    const screen = screenOf(told(), state);
    if (screen.kind !== 'set') return;
    const { rest, clock, number } = screen;
    if (rest !== null) announce(phone.restOverFor(number));
    else if (clock.kind === 'every') announce(phone.startSet(number));
    else if (clock.kind !== 'none' && clock.began !== null) {
      // Of work that goes by the clock the beginning is told as well: it begins by itself.
      if (clock.began === over) announce(phone.workNow);
      else if (clock.began + 1000 * lastsFor(clock) === over) announce(phone.timeUp);
    }
  }

  const look = watchClock({
    mount,
    isOn,
    beat: (first) => signalBeat(keep.kept().settings, first),
    ended: draw,
    putBack: (now) => {
      state = afterPutBack(state, now);
      keep.put({ state }).catch(() => undefined);
      draw();
    },
    tell: tellEnd,
  });

  /** `screen`: what stands now, where that is known. */
  const turn = (screen?: Screen): void => {
    document.body.classList.toggle('training', isOn());
    root.hidden = !isOn();
    if (isOn()) {
      draw();
      toTop();
      return;
    }
    // At once, so that nothing is seen to come.
    showOpenWeek();
    // Out of sight the screen can wait for a task of its own; the ways to it stand in the book.
    showWays(screen ?? screenOf(told(), state));
    nextTask().then(draw, () => undefined);
  };

  steadyTaps(root);
  for (const way of [wayIn, wayBack]) {
    way.addEventListener('click', () => {
      lastTap = performance.now();
    });
  }
  keep.persisted().then(
    (said) => {
      persisted = said;
    },
    () => undefined,
  );
  const showKept = (): void => {
    document.documentElement.classList.toggle('can-keep', keep.fault() === null);
  };
  keep.onChange(() => {
    planRest();
    showKept();
    draw();
    showOpenWeek();
  });
  // The browser found words in a week that was put away, and turns to it without telling the address.
  book.addEventListener('beforematch', ({ target }) => {
    if (target instanceof Element) showTallies(target.closest('.leaf.week'));
  });
  for (const event of ['visibilitychange', 'pageshow', 'focus']) {
    window.addEventListener(event, () => {
      draw();
      look();
      showOpenWeek();
    });
  }
  addEventListener('hashchange', () => turn());
  showKept();
  // Whoever has been here before comes to train.
  if (location.hash === '' && keep.kept().seenEdition !== null && keep.fault() === null) {
    history.replaceState(null, '', HERE);
  }
  turn(first);
}
