/** Figures of the training screens themselves, as the plan has them. */
import { phoneFigures } from '../engine/sessions/phone-figures.js';
import type { ClientPlan } from '../model/client-plan.js';
import type { Plan } from '../model/plan.js';
import { valueInForce } from './value-in-force.js';

export const phoneFiguresOf = (plan: Pick<Plan, 'rules'>): ClientPlan['phone'] =>
  phoneFigures((rule) => valueInForce(plan, rule));
