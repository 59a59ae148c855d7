/** Every plan the engine makes, audited from its JSON: the demo studio's, and those of made-up studios. */
import { expect, it } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import { generateStudio } from '../engine/generate-studio.js';
import { planDemo } from '../studio/demo-plans.js';
import { auditPlan } from './audit.js';

const SEEDS = 400;

const asJson = (plan: unknown): unknown => JSON.parse(JSON.stringify(plan));

it("finds nothing in the demo studio's plans", async () => {
  const { plans } = await planDemo();
  expect(plans.size).toBeGreaterThan(0);
  for (const [client, plan] of plans) expect(auditPlan(asJson(plan)), client).toEqual([]);
});

it(`finds nothing in the plans of made-up studios, seeds 1 to ${SEEDS}`, () => {
  let planned = 0;
  const found: string[] = [];
  for (let seed = 1; seed <= SEEDS; seed += 1) {
    const { value } = planBlock({ ...generateStudio(seed), edition: 0 });
    if (value === null) continue;
    planned += 1;
    for (const finding of auditPlan(asJson(value)).slice(0, 3)) found.push(`seed ${seed}: ${finding}`);
  }
  expect(planned).toBeGreaterThan(SEEDS / 5);
  expect(found).toEqual([]);
});
