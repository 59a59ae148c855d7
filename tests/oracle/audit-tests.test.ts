/** The audit of tests: silent where all is well, and each check speaks up on a planted fault. */
import { expect, it } from 'vitest';
import { auditTests } from './audit-tests.js';
import type { PlanItem, PlanJson } from './plan-json.js';
import { planOf } from './plan-of-case.js';

const CASES = ['tests-start-and-end', 'tests-older', 'tests-once'];

const itemsOf = (plan: PlanJson, week: number): readonly PlanItem[] =>
  plan.weeks[week - 1]?.sessions.flatMap(({ groups }) => groups.flatMap(({ items }) => items)) ?? [];
const isTested = ({ sets }: PlanItem): boolean => sets.some(({ kind }) => kind === 'test');
const testedIn = (plan: PlanJson, week: number): PlanItem =>
  itemsOf(plan, week).find((item) => isTested(item) && item.sets.some(({ stopAt }) => stopAt !== undefined)) ??
  expect.fail('no test');
const measureIn = (plan: PlanJson): PlanItem =>
  plan.weeks.flatMap(({ sessions }) => sessions.flatMap(({ groups }) => groups)).find(({ kind }) => kind === 'test')
    ?.items[0] ?? expect.fail('no measure');
const asTest = (item: PlanItem | undefined): void => {
  const [set] = item?.sets.filter(({ kind }) => kind === 'work') ?? [];
  if (set === undefined) expect.fail('no work');
  set.kind = 'test';
};

it.each(CASES)('is silent where tests stand as they must: %s', (name) => {
  const plan = planOf(name);
  expect(plan.weeks.some(({ number }) => itemsOf(plan, number).some(isTested))).toBe(true);
  expect(auditTests(plan)).toEqual([]);
});

it.each<readonly [string, RegExp, string, (plan: PlanJson) => void]>([
  [
    'an exercise tested twice in one week',
    /week 1: goblet-squat is tested twice, in A and in C/,
    'tests-once',
    (plan) => asTest(itemsOf(plan, 1).find((item) => item.exercise === 'goblet-squat' && !isTested(item))),
  ],
  [
    'a third test of a row',
    /A\/goblet-squat: tested in weeks 1, 3, 6/,
    'tests-once',
    (plan) => asTest(itemsOf(plan, 3).find(({ exercise }) => exercise === 'goblet-squat')),
  ],
  [
    'a measure that stops with some left',
    /is measured, and yet not for its time alone/,
    'tests-older',
    (plan) => void Object.assign(measureIn(plan).sets[0] ?? {}, { stopAt: { reserve: 30 } }),
  ],
  [
    'something tried in the week of a test',
    /A\/goblet-squat: tested, and not held/,
    'tests-once',
    (plan) => {
      const strand = plan.inputs.strands.find(({ row }) => row === testedIn(plan, 1).row);
      for (const one of strand?.occurrences ?? []) delete one.held;
    },
  ],
])('sees %s', (_name, finding, of, spoil) => {
  const plan = planOf(of);
  spoil(plan);
  expect(auditTests(plan).join('\n')).toMatch(finding);
});
