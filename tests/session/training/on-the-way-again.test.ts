/** What was said of a session as a whole comes back to mind on a later day; less is offered only of what is left. */
import { describe, expect, test } from 'vitest';
import type { ClientPlan } from '../../../src/model/client-plan.js';
import { clientPlanOf } from '../../../src/web/client-plan.js';
import { planDemo } from '../../studio/demo-plans.js';
import { circuitPlan } from '../circuit-plan.js';
import { Held, onTo } from './hold.js';

const bare: ClientPlan = clientPlanOf(circuitPlan);
const demo = await planDemo();
const DAY = 24 * 3600;

function said(degree: number, take: 'gently' | 'stop'): Held {
  const held = new Held(bare, bare.starts);
  held.act({ act: 'open', occurrence: 1 });
  held.act({ act: 'today', today: 'something hurts' });
  held.act({ act: 'sign', sign: null });
  held.act({ act: 'where', where: 'knee' });
  held.act({ act: 'side', side: 'left' });
  held.act({ act: 'degree', degree });
  held.act({ act: 'heed', take });
  return held;
}

const sore = { where: 'knee', side: 'left', degree: bare.pain.leave, date: bare.starts };

describe('pain of a session as a whole', () => {
  test('is said back before it on a later day, and the way in no longer speaks of today', () => {
    const held = said(bare.pain.leave, 'stop');
    const kinds = () => {
      held.act({ act: 'home' });
      const home = held.screen();
      return home.kind === 'home' ? home.notices.map(({ kind }) => kind) : expect.fail();
    };
    expect(kinds()).toContain('hurt');
    expect(held.act({ act: 'open', occurrence: 1 })).not.toHaveProperty('sore');
    held.wait(3 * DAY);
    expect(kinds()).not.toContain('hurt');
    expect(held.act({ act: 'open', occurrence: 1 })).toMatchObject({ kind: 'today', sore });
    expect(held.reload()).toMatchObject({ sore });
    // Decided anew, it is not said back again.
    held.act({ act: 'today', today: 'as usual' });
    onTo(held, 'finished');
    held.wait(2 * DAY).act({ act: 'open', occurrence: 2 });
    expect(held.screen()).toMatchObject({ kind: 'today' });
    expect(held.screen()).not.toHaveProperty('sore');
  });

  test.each([
    ['it was little', said(bare.pain.gentle, 'gently')],
    ['it was taken back', said(bare.pain.leave, 'stop')],
    ['the coach has answered with an edition', said(bare.pain.leave, 'stop')],
  ])('is not where %s', (why, held) => {
    if (why.includes('back')) held.events = held.events.filter(({ kind }) => kind !== 'pain');
    if (why.includes('edition')) Object.assign(held, { plan: { ...bare, edition: bare.edition + 1 } });
    held.wait(3 * DAY).act({ act: 'open', occurrence: 1 });
    expect(held.screen()).toMatchObject({ kind: 'today' });
    expect(held.screen()).not.toHaveProperty('sore');
  });
});

describe('less', () => {
  const whole = clientPlanOf(demo.plans.get('rowan-ashby') ?? expect.fail());
  const sessions = whole.weeks.flatMap((week) => week.sessions);
  const short = sessions[0]?.short ?? expect.fail();

  /** The first session again, in its next week, after so many of its first rows were left since they hurt. */
  function shortened(hurt: number): Held {
    const held = new Held(whole, whole.starts);
    const next = sessions.find(({ id, occurrence }) => id === sessions[0]?.id && occurrence > 1) ?? expect.fail();
    held.act({ act: 'open', occurrence: 1 });
    for (let rows = 0; rows < hurt; rows += 1) {
      onTo(held, 'set');
      held.act({ act: 'something hurts' });
      held.act({ act: 'sign', sign: null });
      held.act({ act: 'where', where: 'neck' });
      held.act({ act: 'degree', degree: whole.pain.leave });
      held.act({ act: 'heed', take: 'leave' });
    }
    onTo(held, 'finished');
    held.wait(7 * DAY).act({ act: 'open', occurrence: next.occurrence });
    held.act({ act: 'morning', worse: false });
    held.act({ act: 'today', today: 'short of time' });
    return held;
  }
  const rowsOf = (keys: readonly string[]): number =>
    new Set(keys.filter((key) => key.includes('/work/')).map((key) => key.split('/')[2])).size;

  test('with all of it left, its planned minutes and its exercises', () => {
    expect(shortened(0).screen()).toMatchObject({
      kind: 'less',
      short: { minutes: short.minutes, exercises: rowsOf(short.sets) },
    });
  });

  test('where a row of it waits, the exercises that are left, and no minutes that nobody reckoned', () => {
    expect(shortened(1).screen()).toMatchObject({
      kind: 'less',
      short: { minutes: null, exercises: rowsOf(short.sets) - 1 },
    });
  });

  test('where it is all that is left, it is not offered', () => {
    const held = shortened(0);
    const lean = {
      ...whole,
      weeks: whole.weeks.map((week) => ({
        ...week,
        sessions: week.sessions.map((one) => ({
          ...one,
          short: {
            minutes: 9,
            sets: one.groups.flatMap(({ items }) => items.flatMap(({ sets }) => sets.map(({ key }) => key))),
          },
        })),
      })),
    };
    Object.assign(held, { plan: lean });
    expect(held.screen()).toMatchObject({ kind: 'less', short: null });
  });
});
