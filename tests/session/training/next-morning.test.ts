/** Was it worse the next morning: asked once, of what hurt on the last day of training, and heeded as the planner heeds it. */
import { describe, expect, test } from 'vitest';
import { logOf } from '../../../src/content/read-log.js';
import type { ClientPlan } from '../../../src/model/client-plan.js';
import type { BodyPart } from '../../../src/model/exercise.js';
import { inOrder } from '../../../src/session/training/marked-sets.js';
import { clientPlanOf } from '../../../src/web/client-plan.js';
import { planDemo } from '../../studio/demo-plans.js';
import { circuitPlan } from '../circuit-plan.js';
import { withItems } from '../with-items.js';
import { Held, nextAct, onTo, rowsMet } from './hold.js';

const plan: ClientPlan = clientPlanOf(circuitPlan);
const demo = await planDemo();
const HOUR = 3600;
const DAY = 24 * HOUR;

function hurt(held: Held, where: BodyPart, degree: number): void {
  held.act({ act: 'something hurts' });
  held.act({ act: 'sign', sign: null });
  held.act({ act: 'where', where });
  held.act({ act: 'side', side: 'left' });
  held.act({ act: 'degree', degree });
  held.act({ act: 'heed', take: 'gently' });
}

/** The first session, in whose first exercise something hurts, to its end; then the second is opened some hours later. */
function opened(said: readonly (readonly [BodyPart, number])[], hours = 70, of = plan): Held {
  const held = new Held(of, of.starts);
  held.act({ act: 'open', occurrence: 1 });
  onTo(held, 'set');
  for (const [where, degree] of said) hurt(held, where, degree);
  onTo(held, 'finished');
  held.wait(hours * HOUR).act({ act: 'open', occurrence: 2 });
  return held;
}

/** Every exercise with so many easier ways. */
const eased = (of: ClientPlan, ways = 1): ClientPlan =>
  withItems(of, (item) => ({
    ...item,
    easier: item.sets.slice(0, ways).map((set) => ({ say: 'Half way down', set })),
  }));

const pains = (held: Held) =>
  inOrder(held.events).flatMap((event) => (event.kind === 'pain' ? [[event.occurrence, event.report] as const] : []));

describe('worse the next morning', () => {
  test.each([
    [plan.pain.gentle, 'easier'],
    [plan.pain.easier, 'leave'],
    [plan.pain.leave, 'waits'],
  ] as const)('%i of 10 is asked of before how today is, and what would follow is said: %s', (degree, advice) => {
    const held = opened([['knee', degree]]);
    const asked = { where: 'knee', side: 'left', degree, date: '2027-01-04', advice };
    expect(held.screen()).toMatchObject({ kind: 'morning', place: { occurrence: 2 }, ...asked });
  });

  test.each([true, false])(
    'the report is told once, with the answer in it (%s), and it is not asked again',
    (worse) => {
      const held = opened([['knee', 2]]);
      const before = held.events.length;
      expect(held.act({ act: 'morning', worse })).toMatchObject({ kind: 'today' });
      expect(pains(held)).toEqual([[1, { where: 'knee', degree: 2, side: 'left', worseNextMorning: worse }]]);
      expect(held.events).toHaveLength(before + 2);
      const log = logOf({ schema: 1, bookletId: 'a'.repeat(32), device: 'phone-1', events: held.events });
      expect(log).not.toHaveProperty('why');
      held.act({ act: 'morning', worse: true });
      expect(held.events).toHaveLength(before + 2);
      held.act({ act: 'home' });
      held.die();
      expect(held.wait(DAY).act({ act: 'open', occurrence: 2 })).toMatchObject({ kind: 'today' });
    },
  );

  test('who cannot say says so: nothing is kept, and how today is comes next', () => {
    const held = opened([['knee', 2]]);
    const before = held.events.length;
    expect(held.act({ act: 'morning', worse: null })).toMatchObject({ kind: 'today' });
    expect(held.events).toHaveLength(before);
    expect(held.reload()).toMatchObject({ kind: 'today' });
  });

  test('of several places the worst is asked of, and all that was said of it is answered', () => {
    const held = opened([
      ['knee', 2],
      ['hip', 1],
      ['knee', 1],
    ]);
    expect(held.screen()).toMatchObject({ kind: 'morning', where: 'knee', degree: 2 });
    held.act({ act: 'morning', worse: false });
    const worse = pains(held).map(([, report]) => [report.where, report.degree, report.worseNextMorning]);
    expect(worse).toHaveLength(3);
    expect(worse).toEqual(
      expect.arrayContaining([
        ['knee', 2, false],
        ['knee', 1, false],
        ['hip', 1, undefined],
      ]),
    );
    // One question, whatever else there is.
    expect(held.screen()).toMatchObject({ kind: 'today' });
  });

  test.each([
    ['nothing hurt', opened([])],
    ['it was nothing', opened([['knee', 0]])],
    ['there was no morning since', opened([['knee', 2]], 3)],
    ['the coach has answered with an edition', opened([['knee', 2]])],
  ])('it is not asked where %s', (why, held) => {
    if (why.includes('edition')) Object.assign(held, { plan: { ...plan, edition: plan.edition + 1 } });
    expect(held.screen()).toMatchObject({ kind: 'today' });
  });

  test('a place and a side that nobody knows are elsewhere, and on none', () => {
    const held = opened([['knee', 2]]);
    held.events = held.events.map((event) =>
      event.kind === 'pain'
        ? { ...event, report: Object.assign({ ...event.report }, { where: 'soul', side: 'up' }) }
        : event,
    );
    expect(held.screen()).toMatchObject({ kind: 'morning', where: 'elsewhere' });
    expect(held.screen()).not.toHaveProperty('side');
  });

  test('nor once there was training since in which nothing hurt', () => {
    const held = opened([['knee', 2]]);
    held.act({ act: 'morning', worse: null });
    onTo(held, 'finished');
    expect(held.wait(2 * DAY).act({ act: 'open', occurrence: 3 })).toMatchObject({ kind: 'today' });
  });

  test('of a session that was let be it is asked as well, and that session is not gone on with', () => {
    const held = new Held(plan, plan.starts);
    held.act({ act: 'open', occurrence: 1 });
    onTo(held, 'set');
    held.act(nextAct(held.screen()) ?? expect.fail());
    hurt(held, 'knee', 2);
    expect(held.wait(3 * DAY).screen()).toMatchObject({ kind: 'home', next: { occurrence: 2 } });
    expect(held.act({ act: 'open', occurrence: 2 })).toMatchObject({ kind: 'morning' });
    held.act({ act: 'morning', worse: false });
    expect(held.act({ act: 'home' })).toMatchObject({ next: { occurrence: 2 } });
  });

  test.each([
    ['worse', true, 'Half way down'],
    ['not worse', false, undefined],
  ] as const)('%s: what it hurt in is done the easier way that day, and nothing else is', (_, worse, say) => {
    const held = opened([['knee', 2]], 70, eased(plan));
    held.act({ act: 'morning', worse });
    held.act({ act: 'today', today: 'as usual' });
    const screen = onTo(held, 'set').screen();
    expect(screen).toMatchObject({ kind: 'set', row: 'squat' });
    expect(screen.kind === 'set' ? screen.figures.easier?.say : '').toBe(say);
    expect(Object.keys(held.state.easier)).toEqual(worse ? ['squat'] : []);
  });

  test.each([
    ['the degree says so', plan.pain.easier, eased(plan)],
    ['there is no easier way of it', 1, eased(plan, 0)],
    ['so the coach’s own rule has it', 1, { ...eased(plan), pain: { ...plan.pain, nextMorning: 2 } }],
  ] as const)('it is left out that day where %s, which is said, and all else is done', (_, degree, of) => {
    const held = opened([['knee', degree]], 70, of);
    held.act({ act: 'open', occurrence: 3 });
    held.act({ act: 'morning', worse: true });
    expect(held.screen()).toMatchObject({ kind: 'today', leftOut: [{ exercise: 'squat', because: [] }] });
    expect(held.reload()).toMatchObject({ leftOut: [{ exercise: 'squat' }] });
    held.act({ act: 'today', today: 'as usual' });
    expect(rowsMet(held)).toEqual(new Set(['row', 'press']));
    expect(held.events.filter(({ kind }) => kind === 'closed')).toHaveLength(2);
  });

  test('a session of nothing else says that nothing of it is left, and stays open to whoever goes home', () => {
    const held = opened([['knee', plan.pain.leave - 1]], 70, eased(plan));
    const screen = held.act({ act: 'morning', worse: true });
    expect(screen).toMatchObject({ kind: 'let be', leftOut: [{ exercise: expect.any(String) }] });
    expect(held.act({ act: 'home' })).toMatchObject({ kind: 'home', next: { occurrence: 2 } });
  });

  test('said before a session, of no exercise, all of the next is done the easier way', () => {
    const held = new Held(eased(plan), plan.starts);
    held.act({ act: 'open', occurrence: 1 });
    held.act({ act: 'today', today: 'something hurts' });
    held.act({ act: 'sign', sign: null });
    held.act({ act: 'where', where: 'neck' });
    held.act({ act: 'degree', degree: 1 });
    held.act({ act: 'heed', take: 'gently' });
    onTo(held, 'finished');
    held.wait(3 * DAY).act({ act: 'open', occurrence: 2 });
    expect(held.screen()).toMatchObject({ kind: 'morning', where: 'neck' });
    held.act({ act: 'morning', worse: true });
    expect(held.state.how).toBe('easier throughout');
  });

  test('where the phone plans again, the planner’s own rule makes it easier, and it is not made so twice', () => {
    const again = clientPlanOf(demo.plans.get('torben-slade') ?? expect.fail());
    expect(again.replan).toBeDefined();
    const [first] = again.weeks.flatMap(({ sessions }) => sessions);
    const next = again.weeks.flatMap(({ sessions }) => sessions).filter(({ id }) => id === first?.id)[1];
    const { replan: _, ...fixed } = again;
    const easedIn = [again, fixed].map((of) => {
      const held = opened([['knee', 2]], 70, of);
      held.act({ act: 'open', occurrence: next?.occurrence ?? 0 });
      expect(held.screen().kind).toBe('morning');
      held.act({ act: 'morning', worse: true });
      return Object.keys(held.state.easier).length;
    });
    expect(easedIn).toEqual([0, 1]);
  });
});
