/** Days without a mark from which on a phone says to ask the coach: what the planner itself takes for a break. */
import { DONE_GAP } from '../engine/rules/done-gap.js';
import type { ClientPlan } from '../model/client-plan.js';
import type { Plan } from '../model/plan.js';
import { valueInForce } from './value-in-force.js';

export const awayDaysOf = (plan: Pick<Plan, 'rules'>): ClientPlan['away'] => valueInForce(plan, DONE_GAP);
