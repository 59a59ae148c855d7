/** A plan as it travels: smaller, and the same when it arrives. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ClientPlan } from '../../src/model/client-plan.js';
import { packPlan, unpackPlan } from '../../src/session/travelling.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { everyShapePlan } from '../fixtures/every-shape-plan.js';
import { plan as otherShapes } from '../fixtures/plan.js';
import { planDemo } from '../studio/demo-plans.js';

const demo = await planDemo();
/** Through text, as it goes. */
const there = (plan: ClientPlan): ClientPlan => unpackPlan(JSON.parse(JSON.stringify(packPlan(plan))));
const asText = (value: unknown): string => JSON.stringify(value);

describe('what travels', () => {
  test.each([
    ['every shape', clientPlanOf(everyShapePlan(4))] as const,
    ['gates and choices', clientPlanOf(otherShapes)] as const,
    ...[...demo.plans].map(([id, plan]) => [id, clientPlanOf(plan)] as const),
  ])('of %s arrives letter for letter, and no longer than it was', (_, plan) => {
    expect(asText(there(plan))).toBe(asText(plan));
    expect(asText(packPlan(plan)).length).toBeLessThan(asText(plan).length);
  });

  test('what stands on the page of an exercise is left out, and taken from there', () => {
    const plan = clientPlanOf(demo.plans.get('hester-vane') ?? expect.fail());
    const items = plan.weeks.flatMap(({ sessions }) =>
      sessions.flatMap(({ groups }) => groups.flatMap((g) => g.items)),
    );
    const leads = new Map<string, string[]>();
    for (const { exercise, easier } of items) {
      const ways = easier.flatMap((one) => (one.exercise?.startsWith(`${exercise}#`) ? [one.say] : []));
      leads.set(exercise, [...new Set(['', ...(leads.get(exercise) ?? []), ...ways])]);
    }
    const page = { called: () => undefined, leads: (exercise: string) => leads.get(exercise) ?? [] };
    const packed = asText(packPlan(plan, page));
    const ways = [...leads.values()].flat().filter((say) => say !== '');
    expect(ways.length).toBeGreaterThan(5);
    expect(ways.filter((say) => packed.includes(asText(say)))).toEqual([]);
    expect(packed).not.toMatch(/"\/[a-z]+-[a-z-]+",/);
    expect(asText(unpackPlan(JSON.parse(packed), page))).toBe(asText(plan));
  });

  test('a way whose id is a number, or has no words, arrives as it is', () => {
    const plan = clientPlanOf(everyShapePlan(1));
    const odd = [
      { exercise: '0', say: '0' },
      { exercise: '1', say: '' },
      { exercise: '2', say: 'Two' },
      { say: 'None' },
    ];
    const weeks = plan.weeks.map((week) => ({
      ...week,
      sessions: week.sessions.map((session) => ({
        ...session,
        groups: session.groups.map((group) => ({
          ...group,
          items: group.items.map((item) => ({
            ...item,
            easier: odd.map((one) =>
              'exercise' in one ? { ...one, exercise: `${item.exercise}#${one.exercise}` } : one,
            ),
          })),
        })),
      })),
    }));
    const page = { called: () => undefined, leads: () => ['', 'Other', '0'] };
    const other = { ...plan, weeks };
    const through = unpackPlan(JSON.parse(asText(packPlan(other, page))), page);
    expect(asText(through)).toBe(asText(other));
  });

  test('of the largest it is less than a third', () => {
    const plan = clientPlanOf(demo.plans.get('hester-vane') ?? expect.fail());
    expect(3 * asText(packPlan(plan)).length).toBeLessThan(asText(plan).length);
  });

  test('a key that does not say where it stands arrives as it is', () => {
    const plan = clientPlanOf(otherShapes);
    const strange = JSON.parse(asText(plan).replaceAll('/both/work/', '//work/').replaceAll('"1/', '"7/'));
    expect(asText(there(strange))).toBe(asText(strange));
  });

  test('of any names and labels, whatever stands in them', () => {
    const plan = clientPlanOf(everyShapePlan(1));
    fc.assert(
      fc.property(fc.string(), fc.array(fc.string(), { maxLength: 4 }), (name, goals) => {
        const weeks = plan.weeks.map((week) => ({
          ...week,
          sessions: week.sessions.map((session) => ({
            ...session,
            name,
            groups: session.groups.map((group) => ({
              ...group,
              items: group.items.map((item) => ({
                ...item,
                easier: [
                  { say: name, exercise: `box-squat#${goals.join()}` },
                  { say: name, exercise: `${item.exercise}#${name}` },
                ],
              })),
            })),
          })),
        }));
        const other = { ...plan, weeks };
        expect(there(other)).toEqual(JSON.parse(asText(other)));
      }),
      { numRuns: 60 },
    );
  });
});
