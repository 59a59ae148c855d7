/**
 * Puts the training screens beside the book. A tap becomes marks; they are kept; only then does the screen change, so that
 * a stroke that is seen is a stroke that is there. Clocks are read, never counted.
 */
import { h, render } from 'preact';
import { ScreenView } from '../../layouts/training/screen.js';
import { clockText } from '../../layouts/training/set.js';
import type { Shown } from '../../layouts/training/shown.js';
import type { ClientPlan, ClientSet } from '../model/client-plan.js';
import type { IsoDate } from '../model/day.js';
import type { LogEvent } from '../model/log.js';
import type { Act, Moment, Screen } from '../model/training.js';
import type { ReplannedItem } from '../session/replan.js';
import { comeBack } from '../session/training/come-back.js';
import { screenOf } from '../session/training/screen-of.js';
import { stepTraining } from '../session/training/step-training.js';
import type { Told } from '../session/training/told.js';
import { readTrainingState, type TrainingState } from '../session/training/training-state.js';
import { phoneSpeechOf } from '../words/phone-speech.js';
import { saySet, saySetAloud } from '../words/say-dose.js';
import { inUnit } from '../words/say-in-unit.js';
import { NO_LOAD, sayLoad, sayLoadText } from '../words/say-load.js';
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
  readTurn,
  sessionLeafId,
} from './read-leaf.js';
import { copyText, fileNameOf, messageOf, type Passed, passOn, saveText } from './send-marks.js';
import { allowSound, keepAwake, signalBeat, signalEnd } from './signals.js';
import { steadyTaps } from './steady-taps.js';

export interface Training {
  readonly book: HTMLElement;
  readonly plan: ClientPlan;
  readonly keep: Keep;
  /** `null` where the plan stays as it is. */
  readonly planAgain: ((events: readonly LogEvent[], now: Moment, today: IsoDate) => readonly ReplannedItem[]) | null;
}

const HERE = '#now';
/** Two taps within so many milliseconds were meant as one. */
const ONE_TAP_MS = 600;
/** How often clocks are read while one is on the screen. */
const LOOK_MS = 200;

const localDay = (now: Date): IsoDate => localMoment(now).slice(0, 10);

export function showTraining({ book, plan, keep, planAgain }: Training): void {
  const speech = phoneSpeechOf(document.documentElement.lang);
  const { phone } = speech.words;
  const emergency = readEmergency();
  const exerciseLanguage = readExerciseLanguage();
  const { root, mount, status, wayIn, wayBack } = build(book, phone.trainingTitle);

  let state: TrainingState = atReturn(readTrainingState(keep.kept().state));
  let replanned: readonly ReplannedItem[] = [];
  let persisted: boolean | null = null;
  let passed: Passed | null = null;
  let storing = false;
  let lastTap = Number.NEGATIVE_INFINITY;
  let shownKind = '';
  /** The end that was signalled last: a moment, so that none is told twice. */
  let signalled = 0;

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

  const planRest = (): void => {
    const now = new Date();
    replanned = planAgain === null ? [] : planAgain(keep.events(), now.getTime(), localDay(now));
  };

  const loadOf = ({ load }: Pick<ClientSet, 'load'>) =>
    load === undefined ? NO_LOAD : inUnit(sayLoad(load, [], speech), keep.kept().settings.units, speech);
  const dose = (set: ClientSet): string => {
    const first = saySet(loadOf(set), set, speech);
    const { then: next } = set;
    return next === undefined ? first : speech.words.doses.followed(first, saySet(loadOf(next), next, speech));
  };
  const aloud = (set: ClientSet): string => {
    const first = saySetAloud(loadOf(set), set, speech);
    const { then: next } = set;
    return next === undefined ? first : speech.words.doses.followed(first, saySetAloud(loadOf(next), next, speech));
  };

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
    const going =
      how === 'save' ? Promise.resolve(saveText(text, name)) : how === 'copy' ? copyText(text) : passOn(text, name);
    going.then(
      async (came) => {
        passed = came;
        if (came !== 'not passed') await keep.put({ passedAt: Date.now() });
        draw();
      },
      () => undefined,
    );
  };

  const shown = (now: Moment, screen: Screen): Shown => ({
    speech,
    act: (one) => {
      act(one).catch(() => undefined);
    },
    now,
    dose,
    aloud,
    load: (load) => sayLoadText(loadOf({ load })),
    nameOf,
    exerciseLanguage,
    leaf: (place, row, exercise) => readTurn(plan, place, row, exercise),
    around: (place, which) => readAround(plan, place, which),
    sessionTitle: (place) => headingOf(sessionLeafId(plan, place)) || place.name,
    film: ({ occurrence }) => readFilm(plan, occurrence),
    changes: readChanges(),
    emergency,
    passed,
    pass,
    draft: plan.bookletId === undefined,
    lighter: screen.kind === 'home' && isLighter(replanned, screen.next?.occurrence),
  });

  function draw(): Screen {
    const now = told();
    const screen = screenOf(now, state);
    const kind = screen.kind === 'pain' ? `pain ${screen.step.at}` : screen.kind;
    render(h(ScreenView, { screen, shown: shown(now.now, screen) }), mount);
    root.classList.toggle('left-hand', now.settings.leftHand);
    const isOn = location.hash === HERE;
    if (kind !== shownKind && isOn) {
      scrollTo(0, 0);
      mount.querySelector<HTMLElement>('h2')?.focus({ preventScroll: true });
    }
    shownKind = kind;
    const training = state.occurrence !== null && !['home', 'finished', 'send', 'this phone'].includes(kind);
    wayBack.hidden = isOn || !training;
    wayBack.textContent = phone.toTraining;
    wayIn.textContent =
      screen.kind === 'home' && screen.next !== null
        ? phone.startSession(shown(0, screen).sessionTitle(screen.next))
        : phone.toTraining;
    keepAwake(isOn && now.settings.awake && screen.kind === 'set').catch(() => undefined);
    return screen;
  }

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
    if (one.act === 'effort') {
      planRest();
      persisted = await keep.persist();
    }
    tellOf(one, draw());
  }

  /** What a mark came to, in one polite sentence. */
  function tellOf(one: Act, screen: Screen): void {
    if (one.act === 'rub out') announce(screen.kind === 'set' ? phone.rubbedOut(screen.number) : '');
    else if (one.act === 'mark') announce(screen.kind === 'set' ? tellMark(screen) : '');
  }

  function tellMark({ last, rest }: Extract<Screen, { readonly kind: 'set' }>): string {
    if (last === null) return '';
    if (rest === null) return phone.markedOnly(last.number);
    return phone.marked(last.number, Math.round((rest.over - rest.began) / 1000));
  }

  /** Reads the clock: figures on the screen follow it, and an end is told once, by sight, sound and word in one frame. */
  function look(): void {
    const now = Date.now();
    const clock = mount.querySelector<HTMLElement>('.clock');
    if (clock === null || location.hash !== HERE) return;
    const over = Number(clock.dataset.over);
    clock.textContent = clockText(over, now);
    const beat = Math.floor(now / 1000);
    if (beat !== lastBeat) {
      lastBeat = beat;
      if (over > now && mount.querySelector('.resting') === null) signalBeat(keep.kept().settings);
    }
    if (over > now || signalled === over) return;
    const late = now - over;
    signalled = over;
    const screen = draw();
    clock.classList.toggle('over', Number(clock.dataset.over) <= now);
    // One that came while nobody looked is seen, and not told as if it were new.
    if (late > LATE_MS && document.visibilityState !== 'visible') return;
    signalEnd(keep.kept().settings);
    if (screen.kind !== 'set') return;
    if (screen.rest !== null) announce(phone.restOverFor(screen.number));
    // Work that goes by the clock has begun by itself.
    else if (screen.clock.kind === 'work and pause' && screen.clock.began === over) announce(phone.workNow);
  }
  let lastBeat = 0;

  const turn = (): void => {
    const here = location.hash === HERE;
    document.body.classList.toggle('training', here);
    root.hidden = !here;
    draw();
    if (!here) return;
    scrollTo(0, 0);
    mount.querySelector<HTMLElement>('h2')?.focus({ preventScroll: true });
  };

  steadyTaps(root);
  for (const way of [wayIn, wayBack]) {
    way.addEventListener('click', () => {
      lastTap = performance.now();
    });
  }
  planRest();
  state = comeBack(told(), state);
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
  });
  for (const event of ['visibilitychange', 'pageshow', 'focus']) {
    window.addEventListener(event, () => {
      draw();
      look();
    });
  }
  document.addEventListener('visibilitychange', look);
  setInterval(look, LOOK_MS);
  addEventListener('hashchange', turn);
  showKept();
  // Whoever has been here before comes to train.
  if (location.hash === '' && keep.kept().seenEdition !== null && keep.fault() === null) {
    history.replaceState(null, '', HERE);
  }
  turn();
}

const LATE_MS = 3000;

/** Whoever comes back is not told once more that it is done. */
const atReturn = (state: TrainingState): TrainingState =>
  state.view === 'finished' || state.view === 'send' || state.view === 'this phone'
    ? { ...state, view: 'home' }
    : state;

const isLighter = (replanned: readonly ReplannedItem[], occurrence: number | undefined): boolean =>
  replanned.some(
    ({ occurrence: own, paper, today }) => own === occurrence && (today?.load?.grams ?? 0) < (paper?.load?.grams ?? 0),
  );

interface Built {
  readonly root: HTMLElement;
  readonly mount: HTMLElement;
  readonly status: HTMLElement;
  readonly wayIn: HTMLElement;
  readonly wayBack: HTMLElement;
}

/** The section of the screens, the way into it from the cover, and the way back from any leaf. */
function build(book: HTMLElement, title: string): Built {
  const root = document.createElement('section');
  root.id = 'training';
  root.hidden = true;
  root.setAttribute('aria-label', title);
  const mount = document.createElement('div');
  const status = document.createElement('p');
  status.className = 'heard';
  status.setAttribute('role', 'status');
  status.id = 'training-says';
  root.append(mount, status);
  book.before(root);
  const wayBack = document.createElement('a');
  wayBack.href = HERE;
  wayBack.className = 'to-training';
  wayBack.hidden = true;
  book.after(wayBack);
  const wayIn = document.createElement('a');
  wayIn.href = HERE;
  wayIn.className = 'main';
  const line = document.createElement('p');
  line.className = 'on way-in';
  line.append(wayIn);
  book.querySelector('.leaf.cover header')?.after(line);
  return { root, mount, status, wayIn, wayBack };
}
