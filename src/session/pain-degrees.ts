/** The degrees of pain that the planner goes by, as a phone needs them in the middle of a session. */
import { PAIN_EASIER } from '../engine/rules/pain-easier.js';
import { PAIN_GENTLE } from '../engine/rules/pain-gentle.js';
import { PAIN_LEAVE } from '../engine/rules/pain-leave.js';
import { PAIN_NEXT_MORNING } from '../engine/rules/pain-next-morning.js';
import type { ClientPlan } from '../model/client-plan.js';
import type { Plan } from '../model/plan.js';
import { valueInForce } from './value-in-force.js';

export const painDegreesOf = (plan: Pick<Plan, 'rules'>): ClientPlan['pain'] => ({
  gentle: valueInForce(plan, PAIN_GENTLE),
  easier: valueInForce(plan, PAIN_EASIER),
  leave: valueInForce(plan, PAIN_LEAVE),
  nextMorning: valueInForce(plan, PAIN_NEXT_MORNING),
});
