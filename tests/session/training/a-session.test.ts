import { describe, expect, test } from 'vitest';
import type { ClientPlan } from '../../../src/model/client-plan.js';
import type { Screen, SetScreen } from '../../../src/model/training.js';
import { clientPlanOf } from '../../../src/web/client-plan.js';
import { everyShapeSent } from '../../browser/every-shape-booklet.js';
import { circuitPlan } from '../circuit-plan.js';
import { Held, nextAct } from './hold.js';

const plan: ClientPlan = clientPlanOf(circuitPlan);
const monday = '2027-01-04';

function isSet(screen: Screen): SetScreen {
  return screen.kind === 'set' ? screen : expect.fail(`a ${screen.kind} screen`);
}

/** To the first set of the first session. */
function begun(): Held {
  const held = new Held(plan, monday);
  held.act({ act: 'open', occurrence: 1 });
  held.act({ act: 'today', today: 'as usual' });
  while (held.screen().kind === 'warm-up') held.act({ act: 'around', done: true });
  // What leads to the work is marked like any other set; these tests look at the work.
  for (let screen = held.screen(); screen.kind === 'set' && screen.figures.set.kind === 'warm-up'; ) {
    screen = held.act({ act: 'mark', key: screen.key });
  }
  held.act({ act: 'begin' });
  return held;
}

const workIn = (held: Held) =>
  held.events.flatMap((event) => (event.kind === 'set' && event.key.includes('/work/') ? [event] : []));

/** On to a screen of that kind, doing all that is asked. */
function onTo(held: Held, kind: Screen['kind']): Screen {
  for (let taps = 0; taps < 400; taps += 1) {
    const screen = held.screen();
    if (screen.kind === kind) return screen;
    const act = nextAct(screen);
    if (act === null) break;
    held.wait(20).act(act);
  }
  return expect.fail(`never came to ${kind}`);
}

describe('the way in', () => {
  test('first of all what is next, then how today is, and no mark before it is said', () => {
    const held = new Held(plan, monday);
    held.seenEdition = null;
    const home = held.screen();
    expect(home).toMatchObject({
      kind: 'home',
      notices: [{ kind: 'first opening' }],
      next: { occurrence: 1, done: 0 },
    });
    expect(held.act({ act: 'open', occurrence: 1 }).kind).toBe('today');
    expect(held.events).toEqual([]);
    held.act({ act: 'today', today: 'as usual' });
    expect(held.events).toMatchObject([{ kind: 'opened', occurrence: 1, today: 'as usual' }]);
  });

  test('on a bad day less is offered: the short version counts, and its sets alone are asked for', () => {
    const held = new Held(plan, monday);
    held.act({ act: 'open', occurrence: 1 });
    const less = held.act({ act: 'today', today: 'not my best' });
    const session = plan.weeks[0]?.sessions[0] ?? expect.fail();
    expect(less).toMatchObject({ kind: 'less', because: 'not my best', short: { minutes: session.short.minutes } });
    held.act({ act: 'go', how: 'short' });
    const asked: string[] = [];
    for (let taps = 0; taps < 100 && held.screen().kind !== 'effort'; taps += 1) {
      const screen = held.screen();
      if (screen.kind === 'set') asked.push(screen.key);
      const act = nextAct(screen) ?? expect.fail();
      held.wait(300).act(act);
    }
    expect([...new Set(asked)].sort()).toEqual([...session.short.sets].sort());
  });

  test('a week without a mark is told, with its days and without a word of blame', () => {
    const held = begun();
    onTo(held, 'finished');
    held.act({ act: 'home' });
    expect(held.wait(9 * 86_400).screen()).toMatchObject({ kind: 'home', next: { occurrence: 2 } });
    expect(held.screen()).toMatchObject({ notices: expect.arrayContaining([{ kind: 'away', days: 9, long: false }]) });
  });

  test('a later edition is told, an ended or withdrawn one offers nothing', () => {
    const held = new Held({ ...plan, edition: 2 }, monday);
    expect(held.screen()).toMatchObject({ notices: [{ kind: 'new edition', edition: 2 }] });
    for (const standing of ['ended', 'withdrawn'] as const) {
      held.standing = standing;
      expect(held.screen()).toMatchObject({ notices: [{ kind: standing }, { kind: 'new edition' }], next: null });
    }
  });
});

describe('a set', () => {
  test('is marked as planned by one tap, and then there is rest by the clock', () => {
    const held = begun();
    const first = isSet(held.screen());
    const work = plan.weeks[0]?.sessions[0]?.groups.flatMap(({ items }) => items).find(({ row }) => row === 'squat');
    expect(first).toMatchObject({ number: 1, turn: { number: 1, of: 3 }, rest: null });
    const after = isSet(held.act({ act: 'mark', key: first.key }));
    const { reps, load } = first.figures.set;
    expect(held.events.at(-1)).toMatchObject({
      kind: 'set',
      key: first.key,
      done: 'done',
      reps,
      load,
      asPlanned: true,
    });
    expect(after.rest).toEqual({ began: held.now, over: held.now + 1000 * (work?.restSeconds ?? 0) });
    expect(after.number).toBe(2);
    expect(after.tally[0]?.marks.map(({ state }) => state).slice(0, 2)).toEqual(['done', 'to do']);
  });

  test('five minutes locked, or a clock put back, and the rest is what the clock says', () => {
    const held = begun();
    const { key } = isSet(held.screen());
    const { rest } = isSet(held.act({ act: 'mark', key }));
    expect(isSet(held.wait(300).screen()).rest).toEqual(rest);
  });

  test('a clock put back tells no rest that it cannot know, and the next rest is right again', () => {
    const held = begun();
    held.act({ act: 'mark', key: isSet(held.screen()).key });
    held.now -= 3_600_000;
    const next = isSet(held.screen());
    expect(next).toMatchObject({ number: 2, rest: null });
    const { rest } = isSet(held.act({ act: 'mark', key: next.key }));
    expect(rest?.began).toBe(held.now);
    expect(onTo(held, 'finished')).toMatchObject({ whole: true });
  });

  test('a second tap on what is marked marks nothing', () => {
    const held = begun();
    const { key } = isSet(held.screen());
    held.act({ act: 'mark', key });
    held.act({ act: 'mark', key });
    expect(workIn(held)).toHaveLength(1);
  });

  test('what was otherwise is said of the set that was marked, and the last word counts', () => {
    const held = begun();
    const { key, item } = isSet(held.screen());
    held.act({ act: 'mark', key });
    const different = held.act({ act: 'different', key });
    expect(different).toMatchObject({ kind: 'different', key, loads: item.loads });
    const load = item.loads?.[0] ?? expect.fail('own kit');
    held.act({ act: 'say', key, amount: 6, load });
    expect(held.events.at(-1)).toMatchObject({ kind: 'set', key, reps: 6, load, asPlanned: false });
    expect(isSet(held.screen()).last?.key).toBe(key);
  });

  test('rubbed out it is open again, whatever was said of it', () => {
    const held = begun();
    const { key } = isSet(held.screen());
    held.act({ act: 'mark', key });
    held.act({ act: 'say', key, amount: 6 });
    const again = isSet(held.act({ act: 'rub out', key }));
    expect(again).toMatchObject({ key, number: 1, last: { row: 'squat' } });
    expect(held.events.filter(({ kind }) => kind === 'void')).toHaveLength(2);
  });

  test('a longer rest lasts, over a reload as well', () => {
    const held = begun();
    const { key } = isSet(held.screen());
    const { rest } = isSet(held.act({ act: 'mark', key }));
    held.act({ act: 'longer rest', seconds: 30 });
    expect(isSet(held.reload()).rest?.over).toBe((rest?.over ?? 0) + 30_000);
  });

  test('a rest that is over is made longer from now on, however long ago it ended', () => {
    const held = begun();
    const { key } = isSet(held.screen());
    const { rest } = isSet(held.act({ act: 'mark', key }));
    const seconds = ((rest?.over ?? 0) - (rest?.began ?? 0)) / 1000;
    held.wait(seconds + 47);
    expect(isSet(held.act({ act: 'longer rest', seconds: 30 })).rest?.over).toBe(held.now + 30_000);
    // Once it runs again, the next tap adds to what is left.
    held.wait(10);
    expect(isSet(held.act({ act: 'longer rest', seconds: 30 })).rest?.over).toBe(held.now + 50_000);
  });

  test('left out, nothing is rested for and no figure is kept', () => {
    const held = begun();
    const { key } = isSet(held.screen());
    expect(isSet(held.act({ act: 'leave out', key })).rest).toBeNull();
    const event = held.events.at(-1);
    expect(event).toMatchObject({ done: 'left out', asPlanned: false });
    expect(Object.keys(event ?? {})).not.toEqual(expect.arrayContaining(['reps']));
  });

  test('one more is still to be done, is marked as extra, and can be rubbed out', () => {
    const held = begun();
    const { key, row } = isSet(held.screen());
    held.act({ act: 'mark', key });
    held.act({ act: 'one more', row });
    expect(held.events.filter(({ kind }) => kind === 'set').at(-1)).toMatchObject({ key });
    const marks = (): readonly string[] => isSet(held.screen()).tally[0]?.marks.map(({ state }) => state) ?? [];
    expect(marks()).toEqual(['done', 'to do', 'to do', 'to do']);
    held.wait(200).act({ act: 'mark', key: isSet(held.screen()).key });
    held.wait(200).act({ act: 'mark', key: isSet(held.screen()).key });
    const beyond = isSet(held.wait(200).screen());
    expect(beyond).toMatchObject({ row, number: 4, of: 4 });
    const question = held.act({ act: 'mark', key: beyond.key });
    expect(held.events.at(-1)).toMatchObject({ kind: 'set', key: beyond.key, done: 'extra', asPlanned: true });
    expect(question).toMatchObject({ kind: 'reserve', row, last: { key: beyond.key, number: 4 } });
    expect(held.act({ act: 'rub out', key: beyond.key })).toMatchObject({ kind: 'reserve', last: { number: 3 } });
  });

  test('one more that is left out after all leaves no mark', () => {
    const held = begun();
    const { row } = isSet(held.screen());
    for (let set = 0; set < 2; set += 1) held.wait(200).act({ act: 'mark', key: isSet(held.screen()).key });
    held.act({ act: 'one more', row });
    held.wait(200).act({ act: 'mark', key: isSet(held.screen()).key });
    const before = held.events.length;
    held.act({ act: 'leave out', key: isSet(held.screen()).key });
    expect(held.screen()).toMatchObject({ kind: 'reserve', row });
    expect(held.events).toHaveLength(before);
  });
});

describe('questions', () => {
  test('how many more is asked once, after the last set, never filled in; passed by, it is not asked again', () => {
    const held = begun();
    const question = onTo(held, 'reserve');
    expect(question).toMatchObject({ row: 'squat', feeler: false });
    expect(held.events.some(({ kind }) => kind === 'reserve')).toBe(false);
    const next = held.act({ act: 'reserve', reps: null });
    expect(next).toMatchObject({ kind: 'set', turn: { number: 2 } });
    expect(held.events.some(({ kind }) => kind === 'reserve')).toBe(false);
  });

  test('a circuit is done round by round, both sides of a round without rest between, and asks at its end', () => {
    const held = begun();
    onTo(held, 'reserve');
    held.act({ act: 'reserve', reps: 2 });
    const order: string[] = [];
    for (let taps = 0; taps < 60 && held.screen().kind === 'set'; taps += 1) {
      const screen = isSet(held.screen());
      const act = nextAct(screen) ?? expect.fail();
      if (act.act === 'mark')
        order.push(`${screen.row} ${screen.figures.set.side ?? ''} ${screen.round?.number}`.trim());
      held.wait(200).act(act);
    }
    expect(order.slice(0, 4)).toEqual(['row left 1', 'row right 1', 'press  1', 'row left 2']);
  });

  test('effort is asked once, at the end, and closes the session with what was said', () => {
    const held = begun();
    const effort = onTo(held, 'effort');
    expect(effort).toMatchObject({ open: 0 });
    const done = held.act({ act: 'effort', effort: 7 });
    expect(held.events.at(-1)).toMatchObject({ kind: 'closed', occurrence: 1, effort: 7 });
    expect(done).toMatchObject({ kind: 'finished', whole: true, place: { done: 1 }, next: { occurrence: 2 } });
  });

  test('stopped where it stands, it can be closed, and is not the whole of it', () => {
    const held = begun();
    held.act({ act: 'mark', key: isSet(held.screen()).key });
    held.act({ act: 'stop here' });
    onTo(held, 'finished');
    expect(held.screen()).toMatchObject({ kind: 'finished', whole: false });
  });
});

describe('a phone that died', () => {
  test('opens where it was left, and asks of the set in hand', () => {
    const held = begun();
    held.act({ act: 'mark', key: isSet(held.screen()).key });
    held.wait(90).act({ act: 'begin' });
    held.wait(240).reload();
    const { key } = isSet(held.screen());
    const home = held.act({ act: 'home' });
    expect(home).toMatchObject({
      notices: expect.arrayContaining([
        expect.objectContaining({ kind: 'interrupted', minutes: 4, set: expect.objectContaining({ key, number: 2 }) }),
      ]),
    });
    expect(isSet(held.act({ act: 'open', occurrence: 1 })).key).toBe(key);
  });
});

describe('every shape', () => {
  test.each([...new Set(everyShapeSent.weeks.flatMap(({ sessions }) => sessions.map(({ occurrence }) => occurrence)))])(
    'session %i can be done to its end, and every set of it is marked once',
    (occurrence) => {
      const held = new Held(everyShapeSent, '2027-01-04');
      held.act({ act: 'open', occurrence });
      onTo(held, 'finished');
      const keys = held.events.flatMap((event) => (event.kind === 'set' ? [event.key] : []));
      expect(keys.length).toBeGreaterThan(3);
      expect(new Set(keys).size).toBe(keys.length);
    },
  );
});

test('a sign tapped by mistake is taken back from its own screen alone, and training goes on', () => {
  const held = begun();
  held.act({ act: 'something hurts' });
  held.act({ act: 'sign', sign: 'fainting' });
  expect(held.act({ act: 'back' })).toMatchObject({ kind: 'pain', step: { at: 'signs' } });
  expect(held.events.at(-1)).toMatchObject({ kind: 'void' });
  expect(held.act({ act: 'back' }).kind).toBe('set');
});
