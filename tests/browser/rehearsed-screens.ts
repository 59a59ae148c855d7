/** Training screens of a whole session, in the made-up language that runs from right to left, as a page of their own. */
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { ScreenView } from '../../layouts/training/screen.js';
import type { LeafSays, Shown } from '../../layouts/training/shown.js';
import type { ClientPlan } from '../../src/model/client-plan.js';
import type { Screen } from '../../src/model/training.js';
import type { PhoneSpeech } from '../../src/words/phone-speech.js';
import { saySet, saySetAloud } from '../../src/words/say-dose.js';
import { NO_LOAD, sayLoad, sayLoadText } from '../../src/words/say-load.js';
import { Held, nextAct } from '../session/training/hold.js';

const NOTHING: LeafSays = {
  id: '',
  page: '',
  cues: [],
  stop: [],
  faults: [],
  why: [],
  gate: [],
  choose: [],
  test: [],
  pieces: [],
  led: [],
  picture: [],
};

function shownIn(speech: PhoneSpeech, now: number): Shown {
  const loadOf = ({ load }: { readonly load?: Parameters<typeof sayLoad>[0] }) =>
    load === undefined ? NO_LOAD : sayLoad(load, [], speech);
  return {
    speech,
    act: () => undefined,
    now,
    counting: true,
    dose: (set) => saySet(loadOf(set), set, speech),
    aloud: (set) => saySetAloud(loadOf(set), set, speech),
    load: (load) => sayLoadText(sayLoad(load, [], speech)),
    nameOf: (exercise) => exercise.replaceAll('-', ' '),
    exerciseLanguage: 'en-GB',
    leaf: () => NOTHING,
    around: () => [],
    sessionTitle: ({ name }) => name,
    changes: [],
    emergency: { call: '', number: '' },
    passed: null,
    pass: () => undefined,
    draft: false,
    lighter: false,
    film: () => null,
    movement: () => null,
  };
}

/** Some sessions of every shape there is. */
const TAPS = 240;

/** Every screen that somebody meets who does all of the first sessions, and those behind its lesser buttons. */
function screensOf(plan: ClientPlan): readonly { readonly screen: Screen; readonly now: number }[] {
  const phone = new Held(plan, plan.starts);
  const met: { screen: Screen; now: number }[] = [];
  const note = (): void => {
    met.push({ screen: phone.screen(), now: phone.now });
  };
  for (let tap = 0; tap < TAPS; tap += 1) {
    note();
    const screen = phone.screen();
    const next = nextAct(screen);
    if (next === null) break;
    if (screen.kind === 'set' && screen.last !== null && screen.number === 1) {
      phone.act({ act: 'different', key: screen.last.key });
      note();
      phone.act({ act: 'back' });
    }
    phone.wait(20).act(next);
  }
  return met;
}

/** Each that looks otherwise, once. */
export const rehearsedScreens = (plan: ClientPlan, speech: PhoneSpeech): string =>
  [
    ...new Set(
      screensOf(plan).map(({ screen, now }) => renderToString(h(ScreenView, { screen, shown: shownIn(speech, now) }))),
    ),
  ]
    .map((html) => `<section class="screen">${html}</section>`)
    .join('');
