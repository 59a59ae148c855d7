/** Something hurts, said where no set is in hand: while warming up, at a question, while cooling down, and at the end. */
import { describe, expect, test } from 'vitest';
import type { ClientItem, ClientPlan } from '../../../src/model/client-plan.js';
import { rowId, type SetKey, setKey } from '../../../src/model/identity.js';
import type { Screen } from '../../../src/model/training.js';
import { inOrder } from '../../../src/session/training/marked-sets.js';
import { clientPlanOf } from '../../../src/web/client-plan.js';
import { planDemo } from '../../studio/demo-plans.js';
import { circuitPlan } from '../circuit-plan.js';
import { withItems } from '../with-items.js';
import { Held, nextAct, onTo } from './hold.js';

const demo = await planDemo();
/** With a warm-up and a cool-down. */
const whole: ClientPlan =
  [...demo.plans.values()]
    .map((plan) => clientPlanOf(plan))
    .find(({ weeks, replan }) => {
      const groups = weeks[0]?.sessions[0]?.groups ?? [];
      const feels = groups.some(({ items }) => items.some(({ sets }) => sets.some(({ kind }) => kind === 'feeler')));
      const around = (['warm-up', 'cool-down'] as const).every((own) => groups.some(({ kind }) => kind === own));
      return replan === undefined && around && !feels;
    }) ?? expect.fail('no demo client cools down');
const bare: ClientPlan = clientPlanOf(circuitPlan);
const { gentle, easier, leave } = whole.pain;

const pains = (held: Held) => inOrder(held.events).flatMap((event) => (event.kind === 'pain' ? [event] : []));
const leftOut = (held: Held): readonly SetKey[] =>
  inOrder(held.events).flatMap((event) => (event.kind === 'set' && event.done === 'left out' ? [event.key] : []));

function at(kind: Screen['kind'], plan = whole): Held {
  const held = new Held(plan, plan.starts);
  held.act({ act: 'open', occurrence: 1 });
  return onTo(held, kind);
}

function say(held: Held, degree: number): Screen {
  expect(held.act({ act: 'something hurts' })).toMatchObject({ kind: 'pain', step: { at: 'signs' } });
  held.act({ act: 'sign', sign: null });
  held.act({ act: 'where', where: 'neck' });
  return held.act({ act: 'degree', degree });
}

const lastRow = (held: Held): string | undefined => {
  const worked = inOrder(held.events).filter((event) => event.kind === 'set' && event.key.includes('/work/'));
  const last = worked.at(-1);
  return last?.kind === 'set' ? last.key.split('/')[2] : undefined;
};

const WHERE = ['warm-up', 'set', 'reserve', 'cool-down', 'effort'] as const;

describe.each(WHERE)('at the %s screen', (kind) => {
  test('back, from its first question and from the advice, ends where it was said, and nothing is kept', () => {
    const held = at(kind);
    const before = inOrder(held.events);
    const stood = held.screen();
    held.act({ act: 'something hurts' });
    expect(held.act({ act: 'back' })).toEqual(stood);
    for (const degree of [gentle, easier, leave]) {
      say(held, degree);
      for (let taps = 0; taps < 9 && held.screen().kind === 'pain'; taps += 1) held.act({ act: 'back' });
      expect(held.screen()).toEqual(stood);
    }
    expect(inOrder(held.events)).toEqual(before);
  });

  test('a sign of alarm ends training, and a slip is taken back', () => {
    const held = at(kind);
    const stood = held.screen();
    held.act({ act: 'something hurts' });
    expect(held.act({ act: 'sign', sign: 'fainting' })).toMatchObject({ step: { at: 'emergency' } });
    held.act({ act: 'back' });
    expect(held.act({ act: 'back' })).toEqual(stood);
    held.act({ act: 'something hurts' });
    held.act({ act: 'sign', sign: 'fainting' });
    expect(held.act({ act: 'heed', take: 'stop' })).toMatchObject({ kind: 'home', next: null });
  });

  test('gently: one goes on where it was said', () => {
    const held = at(kind);
    const stood = held.screen();
    expect(say(held, gentle)).toMatchObject({ step: { at: 'advice', advice: 'gently' } });
    expect(held.act({ act: 'heed', take: 'gently' })).toEqual(stood);
    expect(pains(held)).toHaveLength(1);
  });
});

describe('while warming up', () => {
  test('it is said of the session as a whole', () => {
    const held = at('warm-up');
    expect(say(held, gentle)).toMatchObject({ row: null, exercise: null, step: { over: false, stops: true } });
    expect(pains(held)[0]).not.toHaveProperty('row');
  });

  test('too much for it, it waits for another day, and how today is is asked again', () => {
    const held = at('warm-up');
    say(held, leave);
    expect(held.act({ act: 'heed', take: 'stop' })).toMatchObject({
      kind: 'home',
      notices: [{ kind: 'draft' }, { kind: 'hurt' }],
    });
    expect(held.act({ act: 'open', occurrence: 1 })).toMatchObject({ kind: 'today' });
  });

  test('after it was said on the way in, taken back it is the warm-up again: how today is is not asked anew', () => {
    const held = new Held(whole, whole.starts);
    held.act({ act: 'open', occurrence: 1 });
    held.act({ act: 'today', today: 'something hurts' });
    held.act({ act: 'sign', sign: null });
    held.act({ act: 'where', where: 'neck' });
    held.act({ act: 'degree', degree: gentle });
    held.act({ act: 'heed', take: 'gently' });
    const stood = onTo(held, 'warm-up').screen();
    held.act({ act: 'something hurts' });
    expect(held.act({ act: 'back' })).toEqual(stood);
    expect(pains(held)).toHaveLength(1);
  });

  test('a short version made easier is still short', () => {
    const eased = withItems(whole, (item) => ({
      ...item,
      easier: item.sets.slice(0, 1).map((set) => ({ say: 'Half', set })),
    }));
    const held = new Held(eased, eased.starts);
    held.act({ act: 'open', occurrence: 1 });
    held.act({ act: 'today', today: 'short of time' });
    held.act({ act: 'go', how: 'short' });
    onTo(held, 'warm-up');
    const { short } = eased.weeks[0]?.sessions[0] ?? expect.fail();
    expect(say(held, easier)).toMatchObject({ step: { advice: 'easier', easier: true } });
    held.act({ act: 'heed', take: 'easier' });
    held.reload();
    onTo(held, 'finished');
    const done = held.events.flatMap((event) => (event.kind === 'set' && event.key.includes('/work/') ? [event] : []));
    expect(new Set(done.map((event) => event.done))).toEqual(new Set(['easier']));
    expect(done.every(({ key }) => short.sets.includes(key))).toBe(true);
  });
});

describe('once an exercise is over', () => {
  test.each(['reserve', 'cool-down', 'effort'] as const)(
    'at the %s screen it is said of what was done last',
    (kind) => {
      const held = at(kind);
      const row = lastRow(held);
      for (const degree of [easier, leave]) {
        expect(say(held, degree)).toMatchObject({ row, step: { degree, over: true } });
        expect(pains(held).at(-1)).toMatchObject({ row, report: { degree } });
        const stood = held.act({ act: 'heed', take: 'gently' });
        expect(stood.kind).toBe(kind);
      }
      expect(leftOut(held)).toEqual([]);
      expect(onTo(held, 'finished').screen().kind).toBe('finished');
    },
  );

  test('at the end there is nothing left to be stopped; before it there is', () => {
    expect(say(at('reserve'), easier)).toMatchObject({ step: { stops: true } });
    expect(say(at('effort'), easier)).toMatchObject({ step: { stops: false } });
    const stopped = at('reserve');
    const row = lastRow(stopped);
    stopped.act({ act: 'stop here' });
    onTo(stopped, 'effort');
    expect(say(stopped, easier)).toMatchObject({ row, step: { over: true, stops: false } });
    expect(stopped.act({ act: 'heed', take: 'gently' }).kind).toBe('effort');
  });

  test('of what was asked of in turns it is said of the exercise that the question names', () => {
    const held = at('reserve', bare);
    for (let taps = 0; taps < 200 && !(held.screen().kind === 'reserve' && lastRow(held) === 'press'); taps += 1)
      held.wait(20).act(nextAct(held.screen()) ?? expect.fail());
    const screen = held.screen();
    expect(screen).toMatchObject({ kind: 'reserve', row: 'row' });
    expect(say(held, gentle)).toMatchObject({ row: 'row', exercise: 'row' });
  });
});

describe('an exercise that comes again as another row', () => {
  /** The press of the round is the squat once more, or what is harder than it. */
  const twice = (change: (item: ClientItem) => Partial<ClientItem>): ClientPlan =>
    withItems(bare, (item) => (item.row === 'press' ? { ...item, ...change(item) } : item));
  const squat = bare.weeks[0]?.sessions[0]?.groups.flatMap(({ items }) => items).find(({ row }) => row === 'squat');
  const easierWay = { say: 'Half way down', set: squat?.sets[0] ?? expect.fail() };
  const again = twice(() => ({ exercise: squat?.exercise ?? expect.fail(), easier: [easierWay] }));

  test.each([
    ['the same', again],
    ['a harder one', twice(() => ({ easier: [{ ...easierWay, exercise: 'squat' }] }))],
  ])('%s is left out with it, and stands again once the answer is taken back', (_, plan) => {
    const held = at('reserve', plan);
    expect(lastRow(held)).toBe('squat');
    expect(say(held, leave)).toMatchObject({ step: { over: false, advice: 'leave' } });
    expect(new Set(leftOut(held).map((key) => key.split('/')[2]))).toEqual(new Set(['press']));
    held.act({ act: 'back' });
    expect(leftOut(held)).toEqual([]);
    held.act({ act: 'degree', degree: leave });
    held.act({ act: 'heed', take: 'leave' });
    onTo(held, 'finished');
    expect(
      held.events.some((event) => event.kind === 'set' && event.key.includes('/press/') && event.done === 'done'),
    ).toBe(false);
  });

  test('the easier way is offered for it, though nothing is left of the row itself', () => {
    const held = at('reserve', again);
    expect(say(held, easier)).toMatchObject({ step: { over: false, advice: 'easier', easier: true } });
    held.act({ act: 'heed', take: 'easier' });
    onTo(held, 'finished');
    const done = held.events.flatMap((event) =>
      event.kind === 'set' && event.key.includes('/press/') ? [event.done] : [],
    );
    expect(new Set(done)).toEqual(new Set(['easier']));
  });

  test('who does it the easier way already is not offered the easier way', () => {
    const held = at('set', again);
    held.act({ act: 'choose easier', easier: null });
    for (let taps = 0; taps < 200; taps += 1) {
      const screen = held.screen();
      if (screen.kind === 'set' && screen.row === 'press' && screen.rest === null) break;
      held.wait(20).act(nextAct(screen) ?? expect.fail());
    }
    held.act({ act: 'choose easier', easier: easierWay });
    expect(say(held, easier)).toMatchObject({ row: 'press', step: { advice: 'easier', easier: false } });
  });

  test('one of another row that is easier than it goes on', () => {
    const plan = withItems(bare, (item) =>
      item.row === 'squat' ? { ...item, easier: [{ ...easierWay, exercise: 'press' }] } : item,
    );
    const held = at('reserve', plan);
    say(held, leave);
    expect(leftOut(held)).toEqual([]);
  });
});

test('a key of a row that nobody knows changes nothing', () => {
  const held = at('reserve');
  const stood = held.screen();
  held.act({ act: 'leave exercise', row: rowId('nobody') });
  held.act({
    act: 'leave out',
    key: setKey({ block: 1, occurrence: 1, row: rowId('nobody'), kind: 'work', ordinal: 1, side: 'both' }),
  });
  expect(held.screen()).toEqual(stood);
});
