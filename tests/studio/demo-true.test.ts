/** What the demo's plans say of loads and tests is so. */
import { beforeAll, expect, it } from 'vitest';
import type { Plan } from '../../src/model/plan.js';
import { everyItem, type PlannedDemo, planDemo } from './demo-plans.js';

let demo: PlannedDemo;
beforeAll(async () => {
  demo = await planDemo();
});

const inEach = (found: (plan: Plan, client: string) => readonly string[]): readonly string[] =>
  [...demo.plans].flatMap(([client, plan]) => found(plan, client).map((text) => `${client}: ${text}`));

it('nobody is told that they begin lighter where no lighter load was picked', () => {
  const saysLighter = (rule: string): boolean => rule === 'return-lighter';
  const told = inEach((plan) =>
    everyItem(plan)
      .filter(({ reasons }) => reasons.some(({ rule }) => saysLighter(rule)))
      .filter(({ sets }) => sets.every(({ load }) => load === undefined))
      .map(({ id }) => id),
  );
  expect(told).toEqual([]);
});

it('after a long break with nothing in hand the client hears that it goes no further yet', () => {
  const plan = demo.plans.get('odile-marsh');
  const heard = (plan === undefined ? [] : everyItem(plan)).flatMap(({ row, reasons }) =>
    reasons.filter(({ rule, audience }) => rule.startsWith('strength-kept') && audience === 'client').map(() => row),
  );
  expect(heard).toContain('wall-push-up');
});

it('a test is not said to open what was tested, or stands in the plan', () => {
  const wrong = inEach((plan, client) => {
    const planned = new Set(everyItem(plan).map(({ exercise }) => String(exercise)));
    const today = Date.parse(plan.today);
    const tested = demo.clients.find(({ id }) => id === client)?.tests ?? [];
    const fresh = tested.filter(({ date }) => today / 86_400_000 - date < 14).map(({ exercise }) => String(exercise));
    return plan.findings
      .filter(({ reason }) => reason.inputs.some(({ name }) => name === 'unlock: test'))
      .flatMap(({ reason }) => reason.inputs.filter(({ name }) => name === 'exercise').map(({ value }) => `${value}`))
      .filter((exercise) => planned.has(exercise) || fresh.includes(exercise));
  });
  expect(wrong).toEqual([]);
});
