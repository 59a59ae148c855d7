/** What hurt so much that it was to be left out waits for the coach: no later session asks for it, and each says why. */
import { describe, expect, test } from 'vitest';
import type { ClientPlan } from '../../../src/model/client-plan.js';
import { clientPlanOf } from '../../../src/web/client-plan.js';
import { planDemo } from '../../studio/demo-plans.js';
import { circuitPlan } from '../circuit-plan.js';
import { Held, onTo, rowsMet } from './hold.js';

const plan: ClientPlan = clientPlanOf(circuitPlan);
const demo = await planDemo();
const DAY = 24 * 3600;

/** The first session, in whose first exercise it hurts so much; the answer taken; to its end. */
function hurtIn(of: ClientPlan, degree: number): Held {
  const held = new Held(of, of.starts);
  held.act({ act: 'open', occurrence: 1 });
  onTo(held, 'set');
  held.act({ act: 'something hurts' });
  held.act({ act: 'sign', sign: null });
  held.act({ act: 'where', where: 'knee' });
  held.act({ act: 'side', side: 'left' });
  held.act({ act: 'degree', degree });
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
    expect(held.screen()).toMatchObject({ kind: 'today', leftOut: [{ exercise: 'squat', hurt }] });
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

  test('a session of nothing else comes to its end without a set', () => {
    const held = hurtIn(plan, plan.pain.leave);
    held.wait(3 * DAY).act({ act: 'open', occurrence: 2 });
    held.act({ act: 'morning', worse: false });
    held.act({ act: 'today', today: 'as usual' });
    expect(rowsMet(held)).toEqual(new Set());
    expect(held.events.filter(({ kind }) => kind === 'closed')).toHaveLength(2);
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
