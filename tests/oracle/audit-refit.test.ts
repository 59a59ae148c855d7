/** Rows in a version they were not written for: silent where all is well, and each check speaks up on a planted fault. */
import { expect, it } from 'vitest';
import { auditRefit } from './audit-refit.js';
import type { PlanItem, PlanJson } from './plan-json.js';
import { itemOf, planOf } from './plan-of-case.js';

const CASE = 'other-way-of-working';
const of = (plan: PlanJson, rule: string): PlanItem =>
  [itemOf(plan, 'straight'), itemOf(plan, 'straight', 1)].find((item) =>
    item.reasons.some((reason) => reason.rule === rule),
  ) ?? expect.fail(`no ${rule}`);

it('is silent where the rows are as they must be', () => {
  expect(auditRefit(planOf(CASE))).toEqual([]);
});

it.each<readonly [string, RegExp, (plan: PlanJson) => void]>([
  [
    'too many plain sets',
    /9 plain sets, above 5/,
    (plan) => void Object.assign(of(plan, 'dose-of-version').asked, { sets: 9 }),
  ],
  [
    'reps of a carry',
    /carry in plain sets of reps/,
    (plan) => void Object.assign(of(plan, 'dose-of-version'), { way: 'carry' }),
  ],
  [
    'steps in plain sets',
    /plain sets that go by steps/,
    (plan) => {
      const [set] = of(plan, 'dose-of-version').sets;
      if (set !== undefined) set.steps = [1, 2, 3];
    },
  ],
  [
    'an effort of another way',
    /asks 45, though the week asks/,
    (plan) => {
      const strand = plan.inputs.strands.find(({ row }) => row === of(plan, 'effort-of-version').row);
      const [one] = strand?.occurrences ?? [];
      if (one !== undefined) one.asked = 45;
    },
  ],
  ['begun with what nobody tested', /which was not tested either/, (plan) => void plan.inputs.capacities.splice(0)],
  [
    'passing over what was tested',
    /passes over push-up, which was tested/,
    (plan) => {
      const [one] = plan.inputs.capacities;
      if (one !== undefined) plan.inputs.capacities.push({ ...one, exercise: 'push-up' });
    },
  ],
  [
    'one refuge twice',
    /deadlift in the place of more than 1/,
    (plan) => {
      const { reasons } = of(plan, 'dose-of-version');
      of(plan, 'begin-tested').reasons.splice(0, 9, ...reasons);
    },
  ],
])('speaks of %s', (_, found, spoil) => {
  const plan = planOf(CASE);
  spoil(plan);
  expect(auditRefit(plan).join('\n')).toMatch(found);
});
