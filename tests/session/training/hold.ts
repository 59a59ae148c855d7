/** A phone without a screen: acts go in, marks are stamped and kept, and the clock is told. */
import { expect } from 'vitest';
import type { ClientPlan } from '../../../src/model/client-plan.js';
import { day, isoOfDay } from '../../../src/model/day.js';
import type { LogEvent } from '../../../src/model/log.js';
import type { Act, PhoneSettings, Screen } from '../../../src/model/training.js';
import { stampedAt } from '../../../src/phone/keep/stamp-marks.js';
import type { ReplannedItem } from '../../../src/session/replan.js';
import { comeBack } from '../../../src/session/training/come-back.js';
import { screenOf } from '../../../src/session/training/screen-of.js';
import { stepTraining } from '../../../src/session/training/step-training.js';
import type { Told } from '../../../src/session/training/told.js';
import { openTraining, readTrainingState, type TrainingState } from '../../../src/session/training/training-state.js';
import { markId } from '../make-marks.js';

const SETTINGS: PhoneSettings = {
  leftHand: false,
  sound: false,
  vibration: false,
  tempo: false,
  awake: true,
  units: 'as printed',
};

export class Held {
  events: LogEvent[] = [];
  state: TrainingState = openTraining();
  now: number;
  seenEdition: number | null = 1;
  passedAt: number | null = null;
  replanned: readonly ReplannedItem[] = [];
  standing: Told['standing'] = 'stands';

  readonly plan: ClientPlan;

  constructor(plan: ClientPlan, from: string) {
    this.plan = plan;
    this.now = Date.parse(`${from}T18:00:00Z`);
  }

  told(): Told {
    const { plan, events, now, seenEdition, passedAt, replanned, standing } = this;
    return {
      plan,
      replanned,
      events,
      now,
      today: isoOfDay(day(Math.floor(now / 86_400_000))),
      settings: SETTINGS,
      fault: null,
      persisted: null,
      standing,
      seenEdition,
      passedAt,
      message: '',
    };
  }

  screen(): Screen {
    return screenOf(this.told(), this.state);
  }

  wait(seconds: number): this {
    this.now += 1000 * seconds;
    return this;
  }

  act(act: Act): Screen {
    const { state, marks } = stepTraining(this.told(), this.state, act);
    const at = `${stampedAt(new Date(this.now), this.events).toISOString().slice(0, 19)}+00:00`;
    for (const mark of marks) {
      const seq = this.events.length + 1;
      this.events.push({ id: markId(1, seq), seq, edition: Math.max(1, this.plan.edition), at, ...mark });
    }
    this.state = state;
    return this.screen();
  }

  /** What was kept is read anew. */
  reload(): Screen {
    this.state = readTrainingState(JSON.parse(JSON.stringify(this.state)));
    this.events = JSON.parse(JSON.stringify(this.events));
    return this.screen();
  }

  /** The phone died, and its page is opened again. */
  die(): Screen {
    this.reload();
    this.state = comeBack(this.told(), this.state);
    return this.screen();
  }
}

/** Whatever the screen asks for, as planned: the next tap of somebody who does all of it. */
export function nextAct(screen: Screen): Act | null {
  switch (screen.kind) {
    case 'home':
      return screen.next === null ? null : { act: 'open', occurrence: screen.next.occurrence };
    case 'morning':
      return { act: 'morning', worse: false };
    case 'today':
      return { act: 'today', today: 'as usual' };
    case 'let be':
      return { act: 'let be' };
    case 'less':
      return { act: 'go', how: 'as planned' };
    case 'warm-up':
    case 'cool-down':
      return { act: 'around', done: true };
    case 'set':
      return screen.rest !== null || (screen.clock.kind !== 'none' && screen.clock.began === null)
        ? { act: 'begin' }
        : { act: 'mark', key: screen.key };
    case 'different':
      return { act: 'say', key: screen.key, amount: 10, ...(screen.marked.load ? { load: screen.marked.load } : {}) };
    case 'easier':
      return { act: 'choose easier', easier: null };
    case 'reserve':
      return { act: 'reserve', reps: 2 };
    case 'pain':
      return { act: 'back' };
    case 'effort':
      return { act: 'effort', effort: 6 };
    case 'finished':
    case 'send':
    case 'this phone':
      return { act: 'home' };
  }
}

/** Tap by tap until such a screen stands. */
export function onTo(held: Held, kind: Screen['kind']): Held {
  for (let taps = 0; taps < 300 && held.screen().kind !== kind; taps += 1)
    held.wait(20).act(nextAct(held.screen()) ?? expect.fail());
  expect(held.screen().kind).toBe(kind);
  return held;
}

/** Rows that are asked for on the way through the rest of a session. */
export function rowsMet(held: Held): ReadonlySet<string> {
  const met = new Set<string>();
  for (let taps = 0; taps < 300 && held.screen().kind !== 'finished'; taps += 1) {
    const screen = held.screen();
    if (screen.kind === 'set') met.add(screen.row);
    held.wait(20).act(nextAct(screen) ?? expect.fail());
  }
  expect(held.screen().kind).toBe('finished');
  return met;
}
