/** What hurt so much that it was to be left out waits for the coach: no later session asks for it, and each says why. */
import { describe, expect, test } from 'vitest';
import { logOf } from '../../../src/content/read-log.js';
import type { ClientItem, ClientPlan } from '../../../src/model/client-plan.js';
import { exerciseId } from '../../../src/model/identity.js';
import { clientPlanOf } from '../../../src/web/client-plan.js';
import { planDemo } from '../../studio/demo-plans.js';
import { circuitPlan } from '../circuit-plan.js';
import { withItems } from '../with-items.js';
import { Held, nextAct, onTo, rowsMet } from './hold.js';

const plan: ClientPlan = clientPlanOf(circuitPlan);
const demo = await planDemo();
const DAY = 24 * 3600;

/** An item's first set as an easier way of it, within it or by another exercise. */
const easierBy = (item: ClientItem, exercise?: string): ClientItem['easier'] =>
  item.sets.slice(0, 1).map((set) => ({ say: 'Half way down', set, ...(exercise === undefined ? {} : { exercise }) }));

const itemOf = (of: ClientPlan, row: string): ClientItem =>
  of.weeks[0]?.sessions[0]?.groups.flatMap(({ items }) => items).find((item) => item.row === row) ?? expect.fail();

const inWeek = (of: ClientPlan, number: number, change: (item: ClientItem) => ClientItem): ClientPlan => ({
  ...of,
  weeks: of.weeks.map((week) =>
    week.number === number ? (withItems({ ...of, weeks: [week] }, change).weeks[0] ?? week) : week,
  ),
});

function say(held: Held, degree: number): void {
  held.act({ act: 'something hurts' });
  held.act({ act: 'sign', sign: null });
  held.act({ act: 'where', where: 'knee' });
  held.act({ act: 'side', side: 'left' });
  held.act({ act: 'degree', degree });
}

/** The first session, in whose first exercise it hurts so much; the answer taken; to its end. */
function hurtIn(of: ClientPlan, degree: number): Held {
  const held = new Held(of, of.starts);
  held.act({ act: 'open', occurrence: 1 });
  onTo(held, 'set');
  say(held, degree);
  held.act({ act: 'heed', take: degree >= of.pain.leave ? 'leave' : 'gently' });
  return onTo(held, 'finished');
}

const occurrencesWith = (of: ClientPlan, exercise: string): readonly number[] =>
  of.weeks
    .flatMap(({ sessions }) => sessions)
    .filter(({ groups }) => groups.some(({ items }) => items.some((item) => item.exercise === exercise)))
    .map(({ occurrence }) => occurrence);

describe('pain of so much that the exercise is to be left out', () => {
  const [, , ...later] = occurrencesWith(plan, 'squat');
  const far = later.at(-1) ?? expect.fail();

  test.each([true, false, null])('it waits in every later session, whatever the next morning was (%s)', (worse) => {
    const held = hurtIn(plan, plan.pain.leave);
    held.wait(3 * DAY).act({ act: 'open', occurrence: 3 });
    expect(held.screen()).toMatchObject({ kind: 'morning', advice: 'waits' });
    held.act({ act: 'morning', worse });
    const hurt = { degree: plan.pain.leave, date: plan.starts };
    expect(held.screen()).toMatchObject({ kind: 'today', leftOut: [{ exercise: 'squat', because: [], hurt }] });
    expect(held.reload()).toMatchObject({ kind: 'today', leftOut: [{ exercise: 'squat', hurt }] });
    held.act({ act: 'today', today: 'as usual' });
    const met = rowsMet(held);
    expect(met.size).toBeGreaterThan(0);
    expect(met).not.toContain('squat');
    held.wait(20 * DAY).act({ act: 'open', occurrence: far });
    expect(held.screen()).toMatchObject({ kind: 'let be', leftOut: [{ exercise: 'squat', hurt }] });
  });

  test('a degree below is asked of and done as printed', () => {
    const held = hurtIn(plan, plan.pain.leave - 1);
    held.wait(3 * DAY).act({ act: 'open', occurrence: 3 });
    held.act({ act: 'morning', worse: false });
    expect(held.screen()).toMatchObject({ kind: 'today', leftOut: [] });
    held.act({ act: 'today', today: 'as usual' });
    expect(rowsMet(held)).toContain('squat');
  });

  test('what is taken back, or answered by a new edition, no longer waits', () => {
    const held = hurtIn(plan, plan.pain.leave);
    const events = held.events;
    held.events = events.filter(({ kind }) => kind !== 'pain');
    held.wait(3 * DAY).act({ act: 'open', occurrence: 3 });
    expect(held.screen()).toMatchObject({ kind: 'today', leftOut: [] });
    held.events = events;
    Object.assign(held, { plan: { ...plan, edition: plan.edition + 1 } });
    expect(held.screen()).toMatchObject({ kind: 'today', leftOut: [] });
  });

  test('the warm-up, whose lines may lead to it, says so once more', () => {
    const whole = clientPlanOf(demo.plans.get('rowan-ashby') ?? expect.fail());
    expect(whole.replan).toBeUndefined();
    const held = hurtIn(whole, whole.pain.leave);
    const exercise = held.events.flatMap((event) =>
      event.kind === 'set' && event.done === 'left out' ? [event] : [],
    )[0]?.exercise;
    const next = occurrencesWith(whole, exercise ?? '')[1] ?? expect.fail();
    held.wait(7 * DAY).act({ act: 'open', occurrence: next });
    held.act({ act: 'morning', worse: false });
    held.act({ act: 'today', today: 'as usual' });
    const hurt = { degree: whole.pain.leave, date: whole.starts };
    expect(held.screen()).toMatchObject({ kind: 'warm-up', leftOut: [{ exercise, hurt }] });
  });

  describe('a session of nothing else', () => {
    const left = (): Held => {
      const held = hurtIn(plan, plan.pain.leave);
      held.wait(3 * DAY).act({ act: 'open', occurrence: 2 });
      held.act({ act: 'morning', worse: false });
      return held;
    };

    test('says so before anybody asks or warms up, and what comes next', () => {
      const hurt = { degree: plan.pain.leave };
      expect(left().screen()).toMatchObject({
        kind: 'let be',
        leftOut: [{ exercise: 'squat', hurt }],
        next: { occurrence: 3, done: 1 },
      });
      expect(left().reload()).toMatchObject({ kind: 'let be' });
    });

    test('is let be by one tap: over, not done, with every set of its work left out, and the next one comes', () => {
      const held = left();
      const before = held.events.length;
      expect(held.act({ act: 'let be' })).toMatchObject({ kind: 'home', next: { occurrence: 3, done: 1 } });
      const made = held.events.slice(before);
      expect(made.at(-1)).toMatchObject({ kind: 'closed', occurrence: 2 });
      expect(made.at(-1)).not.toHaveProperty('effort');
      expect(made.slice(0, -1).map((event) => (event.kind === 'set' ? event.done : event.kind))).toEqual(
        itemOf(plan, 'squat').sets.map(() => 'left out'),
      );
      expect(
        logOf({ schema: 1, bookletId: 'a'.repeat(32), device: 'phone-1', events: held.events }),
      ).not.toHaveProperty('why');
      // A second tap that comes late closes nothing else.
      held.act({ act: 'let be' });
      expect(held.events).toHaveLength(before + made.length);
    });

    test('may be come back to: nothing is kept of having looked', () => {
      const held = left();
      const before = held.events.length;
      expect(held.act({ act: 'home' })).toMatchObject({ kind: 'home', next: { occurrence: 2 } });
      expect(held.events).toHaveLength(before);
    });

    test('of one that never had any work it is not said', () => {
      const of: ClientPlan = {
        ...plan,
        weeks: plan.weeks.map((week) => ({ ...week, sessions: week.sessions.map((one) => ({ ...one, groups: [] })) })),
      };
      const held = new Held(of, of.starts);
      expect(held.act({ act: 'open', occurrence: 1 })).toMatchObject({ kind: 'today' });
    });

    test('of one of which something is left it cannot be said', () => {
      const held = hurtIn(plan, plan.pain.leave);
      held.wait(3 * DAY).act({ act: 'open', occurrence: 3 });
      const before = held.events.length;
      held.act({ act: 'let be' });
      expect(held.events).toHaveLength(before);
    });
  });

  test('where the phone plans again the planner alone sees to it, and says so once', () => {
    const again = clientPlanOf(demo.plans.get('torben-slade') ?? expect.fail());
    expect(again.replan).toBeDefined();
    const held = hurtIn(again, again.pain.leave);
    const squat = again.weeks[0]?.sessions[0]?.groups.find(({ kind }) => kind !== 'warm-up')?.items[0]?.exercise;
    const next = occurrencesWith(again, squat ?? '')[1] ?? expect.fail();
    held.wait(3 * DAY).act({ act: 'open', occurrence: next });
    held.act({ act: 'morning', worse: false });
    const screen = held.screen();
    expect(screen.kind === 'today' && screen.leftOut.some(({ hurt }) => hurt !== undefined)).toBe(false);
  });
});

describe('what waits with it', () => {
  const today = (of: ClientPlan, occurrence: number, held = hurtIn(of, of.pain.leave)) => {
    held.wait(7 * DAY).act({ act: 'open', occurrence });
    held.act({ act: 'morning', worse: false });
    const screen = held.screen();
    return screen.kind === 'today' || screen.kind === 'let be' ? screen.leftOut : expect.fail(screen.kind);
  };
  const squat = (change: (item: ClientItem) => Partial<ClientItem>) => (item: ClientItem) =>
    item.row === 'squat' ? { ...item, ...change(item) } : item;

  test('in a later week its row, where what it is then is not known to be easier; it is said what hurt', () => {
    const later = inWeek(
      plan,
      2,
      squat(() => ({ exercise: exerciseId('jump') })),
    );
    expect(today(later, 3)).toMatchObject([{ exercise: 'jump', hurt: { in: 'squat', degree: plan.pain.leave } }]);
    // Where it is the same again, it is said of that itself.
    expect(today(later, 5)[0]?.hurt).not.toHaveProperty('in');
  });

  test('its row goes on with what is known to be easier', () => {
    const named = withItems(
      plan,
      squat((item) => ({ easier: easierBy(item, 'sit-down') })),
    );
    // Something of it was done before it hurt, so that it is known what was shown.
    const later = inWeek(
      named,
      2,
      squat(() => ({ exercise: exerciseId('sit-down'), easier: [] })),
    );
    expect(today(later, 3)).toEqual([]);
  });

  test.each([
    ['one step', ['squat']],
    ['over another', ['row', 'squat']],
  ])('another row that is harder than it, by %s', (_, [first = '', second]) => {
    const of = withItems(plan, (item) => {
      if (item.row === 'press') return { ...item, easier: easierBy(item, first) };
      return item.row === 'row' && second !== undefined ? { ...item, easier: easierBy(item, second) } : item;
    });
    const names = today(of, 3).map(({ exercise }) => exercise);
    expect(names).toEqual(second === undefined ? ['squat', 'press'] : ['squat', 'row', 'press']);
  });

  test('what a table or a step that is not earned would lead to', () => {
    const of = withItems(plan, (item) =>
      item.row === 'press'
        ? {
            ...item,
            sets: item.sets.map((set) => ({
              ...set,
              otherwise: [{ exercise: exerciseId('squat'), sets: 1, tempo: item.tempo, reps: 5 }],
            })),
          }
        : item,
    );
    expect(today(of, 3).map(({ exercise }) => exercise)).toEqual(['squat', 'press']);
  });

  test('the easier way that was shown when it hurt, before any set of it, where another row is that', () => {
    const of = withItems(
      plan,
      squat((item) => ({ easier: easierBy(item, 'press') })),
    );
    const held = new Held(of, of.starts);
    held.act({ act: 'open', occurrence: 1 });
    onTo(held, 'set');
    held.act({
      act: 'choose easier',
      easier: easierBy(itemOf(of, 'squat'), 'press')[0] ?? null,
    });
    say(held, of.pain.leave);
    held.act({ act: 'heed', take: 'leave' });
    onTo(held, 'finished');
    expect(today(of, 3, held).map(({ exercise }) => exercise)).toEqual(['squat', 'press']);
  });

  test('where nothing of it was marked it cannot be told which way was shown: each of them waits', () => {
    const of = {
      ...withItems(
        plan,
        squat((item) => ({ easier: easierBy(item, 'press') })),
      ),
    };
    const held = new Held(of, of.starts);
    held.act({ act: 'open', occurrence: 1 });
    onTo(held, 'set');
    say(held, of.pain.leave - 1);
    held.act({ act: 'heed', take: 'stop' });
    held.wait(7 * DAY).act({ act: 'open', occurrence: 3 });
    held.act({ act: 'morning', worse: true });
    const screen = held.screen();
    expect(screen.kind === 'today' && screen.leftOut.map(({ exercise }) => exercise)).toEqual(['squat', 'press']);
  });

  test('where the planner sees to what waits, it is offered as no easier way all the same', () => {
    const { replan } = clientPlanOf(demo.plans.get('torben-slade') ?? expect.fail());
    const own = withItems(plan, (item) =>
      item.row === 'row' ? { ...item, easier: [...easierBy(item, 'squat'), ...easierBy(item, 'press')] } : item,
    );
    const held = hurtIn({ ...own, replan: replan ?? expect.fail() }, plan.pain.leave);
    held.wait(7 * DAY).act({ act: 'open', occurrence: 3 });
    held.act({ act: 'morning', worse: false });
    const asked = (): boolean => {
      const screen = held.screen();
      return screen.kind === 'set' && screen.row === 'row';
    };
    for (let taps = 0; taps < 200 && !asked(); taps += 1) held.wait(20).act(nextAct(held.screen()) ?? expect.fail());
    expect(held.screen()).toMatchObject({ easier: [{ exercise: 'press' }] });
    const easier = held.act({ act: 'easier' });
    expect(easier.kind === 'easier' && easier.options.map(({ exercise }) => exercise)).toEqual(['press']);
    held.act({
      act: 'choose easier',
      easier: easierBy(itemOf(own, 'row'), 'press')[0] ?? null,
    });
    expect(held.state.easier).toEqual({ row: 1 });
  });
});
