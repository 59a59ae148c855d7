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
                  { say: name, for: goals },
                  { say: name, for: goals },
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
