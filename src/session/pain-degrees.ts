/** The degrees of pain that the planner goes by, as a phone needs them in the middle of a session. */
import { PAIN_EASIER } from '../engine/rules/pain-easier.js';
import { PAIN_GENTLE } from '../engine/rules/pain-gentle.js';
import { PAIN_LEAVE } from '../engine/rules/pain-leave.js';
import type { ClientPlan } from '../model/client-plan.js';
import type { Plan } from '../model/plan.js';
import type { Rule } from '../model/reason.js';

/** The coach's own value, else as the plan quotes it, else the rulebook's: an edition of before it quoted them holds on. */
export function painDegreesOf({ rules }: Pick<Plan, 'rules'>): ClientPlan['pain'] {
  const inForce = (rule: Rule): number => {
    const quoted = rules.find(({ id }) => id === rule.id) ?? rule;
    return quoted.overridden?.value ?? quoted.value;
  };
  return { gentle: inForce(PAIN_GENTLE), easier: inForce(PAIN_EASIER), leave: inForce(PAIN_LEAVE) };
}
