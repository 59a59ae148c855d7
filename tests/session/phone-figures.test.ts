/** Figures that the training screens go by are rules like others: a coach's own value travels with the plan, and is gone by. */
import { describe, expect, test } from 'vitest';
import type { ClientPlan } from '../../src/model/client-plan.js';
import type { Plan } from '../../src/model/plan.js';
import type { Screen } from '../../src/model/training.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { everyShapePlan } from '../fixtures/every-shape-plan.js';
import { circuitPlan } from './circuit-plan.js';
import { Held, nextAct } from './training/hold.js';

const OWN = [
  ['rest-longer', 'restLonger', 30, 45],
  ['into-place', 'intoPlace', 5, 12],
  ['away-said', 'awaySaid', 7, 4],
] as const;

const withRule = (plan: Plan, rule: string, value: number): Plan => ({
  ...plan,
  rules: plan.rules.map((one) => (one.id === rule ? { ...one, overridden: { value, reason: 'seen it' } } : one)),
});
const sent = (rule: string, value: number): ClientPlan => ({
  ...clientPlanOf(withRule(circuitPlan, rule, value)),
  edition: 1,
});

test.each(OWN)(
  '%s travels as it is, as the coach has it, and as it was before a plan quoted it',
  (rule, name, usual, own) => {
    expect(clientPlanOf(circuitPlan).phone[name]).toBe(usual);
    expect(sent(rule, own).phone[name]).toBe(own);
    const older = { ...circuitPlan, rules: circuitPlan.rules.filter(({ id }) => id !== rule) };
    expect(clientPlanOf(older).phone[name]).toBe(usual);
  },
);

function onTo(held: Held, isIt: (screen: Screen) => boolean): Screen {
  for (let taps = 0; taps < 300 && !isIt(held.screen()); taps += 1)
    held.wait(20).act(nextAct(held.screen()) ?? expect.fail());
  return held.screen();
}

describe('each is gone by', () => {
  test('rest-longer: one tap adds so many seconds', () => {
    const plan = sent('rest-longer', 45);
    const held = new Held(plan, plan.starts);
    const resting = onTo(held, (screen) => screen.kind === 'set' && screen.rest !== null);
    if (resting.kind !== 'set' || resting.rest === null) return expect.fail();
    expect(resting.restLonger).toBe(45);
    const { over } = resting.rest;
    expect(held.act({ act: 'longer rest', seconds: resting.restLonger })).toMatchObject({
      rest: { over: over + 45_000 },
    });
  });

  test('into-place: a hold begins so many seconds after the tap', () => {
    const shapes = clientPlanOf(withRule({ ...everyShapePlan(4), rules: circuitPlan.rules }, 'into-place', 12));
    const held = new Held(shapes, '2027-01-04');
    onTo(held, (screen) => screen.kind === 'set' && screen.rest === null && screen.clock.kind === 'timed');
    expect(held.act({ act: 'begin' })).toMatchObject({ clock: { began: held.now + 12_000 } });
  });

  test('away-said: from so many days on they are told', () => {
    const plan = sent('away-said', 4);
    const home = (days: number): string => {
      const held = new Held(plan, plan.starts);
      onTo(held, ({ kind }) => kind === 'finished');
      held.act({ act: 'home' });
      return JSON.stringify(held.wait(86_400 * days).screen());
    };
    expect(home(4)).toContain('"away"');
    expect(home(3)).not.toContain('"away"');
  });
});
