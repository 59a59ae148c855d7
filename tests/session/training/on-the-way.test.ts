/** What happens around the sets: a day that is not one's best, pain, a session let be, weeks away, planned again. */
import { describe, expect, test } from 'vitest';
import type { ClientPlan, ClientSession } from '../../../src/model/client-plan.js';
import type { Screen, SetScreen } from '../../../src/model/training.js';
import type { ReplannedItem } from '../../../src/session/replan.js';
import { clientPlanOf } from '../../../src/web/client-plan.js';
import { reason } from '../../fixtures/plan.js';
import { planDemo } from '../../studio/demo-plans.js';
import { Held, nextAct } from './hold.js';

const demo = await planDemo();
const drawn = clientPlanOf([...demo.plans].find(([id]) => id === 'aldous-brack')?.[1] ?? expect.fail());
const plan: ClientPlan = { ...drawn, edition: 1 };
const [first, second]: readonly ClientSession[] = plan.weeks.flatMap(({ sessions }) => sessions);
const HOUR = 3600;

function isSet(screen: Screen): SetScreen {
  return screen.kind === 'set' ? screen : expect.fail(`a ${screen.kind} screen`);
}

const opened = (): Held => {
  const held = new Held(plan, first?.date ?? '');
  held.act({ act: 'open', occurrence: 1 });
  return held;
};

function onTo(held: Held, kind: Screen['kind']): Screen {
  for (let taps = 0; taps < 300 && held.screen().kind !== kind; taps += 1) {
    held.wait(20).act(nextAct(held.screen()) ?? expect.fail());
  }
  return held.screen();
}

/** At the first set of work. */
function training(): Held {
  const held = opened();
  held.act({ act: 'today', today: 'as usual' });
  onTo(held, 'set');
  while (isSet(held.screen()).figures.set.kind !== 'work') held.act(nextAct(held.screen()) ?? expect.fail());
  held.act({ act: 'begin' });
  return held;
}

const sets = (held: Held) => held.events.flatMap((event) => (event.kind === 'set' ? [event] : []));

describe('what hurts before a session', () => {
  const hurt = (degree: number): Held => {
    const held = opened();
    held.act({ act: 'today', today: 'something hurts' });
    held.act({ act: 'sign', sign: null });
    held.act({ act: 'where', where: 'knee' });
    held.act({ act: 'side', side: 'both' });
    held.act({ act: 'degree', degree });
    return held;
  };

  test('is of no exercise; at the degree at which one is left it is the session, and it waits for another day', () => {
    const held = hurt(plan.pain.leave);
    expect(held.screen()).toMatchObject({ row: null, step: { advice: 'leave' } });
    expect(held.act({ act: 'heed', take: 'stop' })).toMatchObject({ kind: 'home', next: { occurrence: 1 } });
    expect(held.events).toMatchObject([
      { kind: 'opened', today: 'something hurts' },
      { kind: 'pain', occurrence: 1, report: { where: 'knee', degree: plan.pain.leave } },
    ]);
    held.wait(20 * HOUR);
    expect(held.screen()).toMatchObject({ kind: 'home', next: { occurrence: 1 } });
    expect(held.act({ act: 'open', occurrence: 1 }).kind).toBe('today');
  });

  test('the easier way is then taken throughout, where one is open for all', () => {
    const held = hurt(plan.pain.easier);
    expect(held.screen()).toMatchObject({ kind: 'pain', step: { advice: 'easier', easier: true } });
    held.act({ act: 'heed', take: 'easier' });
    const { figures } = isSet(onTo(held, 'set'));
    expect(figures.easier).toBeDefined();
  });
});

describe('in a session', () => {
  test('chosen easier for an exercise, its open sets are done so; those done before stay as they were', () => {
    const held = training();
    const { key, item, row } = isSet(held.screen());
    held.act({ act: 'mark', key });
    const [easier] = item.easier;
    held.act({ act: 'easier' });
    const next = isSet(held.act({ act: 'choose easier', easier: easier ?? null }));
    expect(next).toMatchObject({ row, figures: { easier: { say: easier?.say } } });
    held.act({ act: 'different', key });
    held.act({ act: 'say', key, amount: 5 });
    expect(sets(held).at(-1)).toMatchObject({ key, done: 'done', exercise: item.exercise, reps: 5 });
    held.act({ act: 'mark', key: next.key });
    expect(sets(held).at(-1)).toMatchObject({ key: next.key, done: 'easier', asPlanned: true });
    expect(held.act({ act: 'different', key: next.key })).toMatchObject({ kind: 'different' });
  });

  test('a word said later of a set changes neither the rest nor what is next', () => {
    const held = training();
    const one = isSet(held.screen());
    held.act({ act: 'mark', key: one.key });
    held.wait(200).act({ act: 'begin' });
    const two = isSet(held.screen());
    const after = isSet(held.act({ act: 'mark', key: two.key }));
    held.wait(10).act({ act: 'say', key: one.key, amount: 3 });
    expect(isSet(held.screen())).toMatchObject({ key: after.key, rest: after.rest, last: { key: two.key } });
  });

  test('with a load that is not said the one that stood there is kept', () => {
    const held = training();
    const { key, figures } = isSet(held.screen());
    held.act({ act: 'say', key, amount: 4 });
    expect(sets(held).at(-1)).toMatchObject({ reps: 4, load: figures.set.load, asPlanned: false });
  });

  test('stopped by a slip of the hand it goes on', () => {
    const held = training();
    held.act({ act: 'mark', key: isSet(held.screen()).key });
    const { key } = isSet(held.screen());
    expect(['cool-down', 'effort']).toContain(held.act({ act: 'stop here' }).kind);
    expect(held.act({ act: 'back' })).toMatchObject({ kind: 'set', key });
    held.act({ act: 'stop here' });
    held.act({ act: 'home' });
    expect(held.act({ act: 'open', occurrence: 1 })).toMatchObject({ kind: 'set', key });
  });

  test('what was left out is not the whole of it, and it closes once', () => {
    const held = training();
    held.act({ act: 'leave out', key: isSet(held.screen()).key });
    expect(onTo(held, 'finished')).toMatchObject({ whole: false });
    held.act({ act: 'effort', effort: 3 });
    expect(held.events.filter(({ kind }) => kind === 'closed')).toHaveLength(1);
  });

  test('a clock put back in the middle: what is answered then is answered, and what is said then counts', () => {
    const held = training();
    const { key, row } = isSet(held.screen());
    held.act({ act: 'mark', key });
    held.wait(-2 * HOUR).act({ act: 'say', key, amount: 2 });
    expect(held.act({ act: 'different', key })).toMatchObject({ marked: { amount: 2 } });
    held.act({ act: 'back' });
    expect(onTo(held, 'reserve')).toMatchObject({ row });
    const next = held.act({ act: 'reserve', reps: 1 });
    expect(next.kind === 'reserve' && next.row === row).toBe(false);
    expect(onTo(held, 'finished').kind).toBe('finished');
  });
});

describe('opened anew', () => {
  test('a set under way for minutes is asked about, a rest is not', () => {
    const held = training();
    held.act({ act: 'mark', key: isSet(held.screen()).key });
    expect(held.wait(300).die()).toMatchObject({ kind: 'set', number: 2 });
    held.act({ act: 'begin' });
    const { key } = isSet(held.screen());
    expect(held.wait(60).die()).toMatchObject({ kind: 'set', key });
    const home = held.wait(240).die();
    expect(home).toMatchObject({ kind: 'home', notices: [{ kind: 'interrupted', set: { key, number: 2 } }] });
    held.act({ act: 'open', occurrence: 1 });
    held.act({ act: 'mark', key });
    expect(sets(held).at(-1)).toMatchObject({ key, done: 'done' });
  });

  test('let be for an hour it is asked, for a day the next session is next', () => {
    const held = training();
    held.act({ act: 'mark', key: isSet(held.screen()).key });
    expect(held.wait(2 * HOUR).die()).toMatchObject({ kind: 'home', notices: [{ kind: 'interrupted', minutes: 120 }] });
    held.act({ act: 'open', occurrence: 1 });
    expect(held.wait(24 * HOUR).screen()).toMatchObject({ kind: 'home', next: { occurrence: 2 } });
  });

  test('opened and nothing done: on another day it is still next, and how today is, is asked anew', () => {
    const held = opened();
    held.act({ act: 'today', today: 'not my best' });
    held.wait(24 * HOUR);
    expect(held.act({ act: 'home' })).toMatchObject({ next: { occurrence: 1 } });
    expect(held.act({ act: 'open', occurrence: 1 }).kind).toBe('today');
    held.act({ act: 'today', today: 'as usual' });
    expect(held.events.map(({ kind }) => kind)).toEqual(['opened', 'opened']);
    expect(held.screen().kind).not.toBe('today');
  });
});

describe('weeks away', () => {
  const home = (days: number): Screen => {
    const held = training();
    onTo(held, 'finished');
    held.act({ act: 'home' });
    return held.wait(24 * HOUR * days).screen();
  };
  const due = (Date.parse(second?.date ?? '') - Date.parse(first?.date ?? '')) / 86_400_000;

  test('are told from a week on, where a session was due; from the days of a break on the coach is to be asked', () => {
    expect(due).toBeLessThan(7);
    expect(JSON.stringify(home(6))).not.toContain('"away"');
    expect(home(9)).toMatchObject({ notices: expect.arrayContaining([{ kind: 'away', days: 9, long: false }]) });
    expect(home(plan.away)).toMatchObject({
      notices: expect.arrayContaining([{ kind: 'away', days: plan.away, long: true }]),
    });
  });

  test('who has not begun was not away', () => {
    const held = new Held(plan, first?.date ?? '');
    expect(JSON.stringify(held.wait(30 * 24 * HOUR).screen())).not.toContain('"away"');
  });
});

test('what was planned again stands beside what is printed, and what is left out is not asked for', () => {
  const held = training();
  const { row, item, key, figures } = isSet(held.screen());
  const work = item.sets.filter(({ kind }) => kind === 'work');
  const lighter = item.loads?.[0] ?? expect.fail();
  const because = [reason('walk-lower-load', 'client')];
  const again: ReplannedItem = {
    occurrence: 1,
    row,
    exercise: item.exercise,
    tempo: 'normal',
    paper: null,
    today: null,
    because,
    bounds: [],
    sets: work.map(({ choose: _, ...set }, index) => ({
      key: set.key,
      set: index === 0 ? { ...set, load: lighter } : null,
    })),
  };
  held.replanned = [again];
  const screen = isSet(held.screen());
  expect(screen).toMatchObject({
    key,
    of: 1,
    figures: { set: { load: lighter } },
    paper: { set: figures.set, because },
  });
  held.act({ act: 'mark', key });
  expect(sets(held).at(-1)).toMatchObject({ load: lighter, asPlanned: true });
  expect(held.screen()).toMatchObject({ kind: 'reserve', row });
});

test('what is left out of a session is said with its reason before it, and of no other session', () => {
  const because = [reason('pain-leave', 'client')];
  const [item] = first?.groups.flatMap(({ kind, items }) => (kind === 'straight' ? items : [])) ?? [];
  const { row, exercise, tempo } = item ?? expect.fail();
  const none = { row, exercise, tempo, sets: [], paper: null, today: null, because, bounds: [] };
  const held = opened();
  held.replanned = [2, 1].map((occurrence) => ({ ...none, occurrence }));
  expect(held.screen()).toMatchObject({ kind: 'today', leftOut: [{ exercise, because }] });
  held.replanned = [{ ...none, occurrence: 2 }];
  expect(held.screen()).toMatchObject({ kind: 'today', leftOut: [] });
});
