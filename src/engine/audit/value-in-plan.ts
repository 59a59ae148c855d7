/** The value of a rule as a finished plan carries it, the coach's own where one is set. */
import type { Plan } from '../../model/plan.js';
import type { Rule } from '../../model/reason.js';

export function valueIn(plan: Pick<Plan, 'rules'>, rule: Rule): number {
  const row = plan.rules.find(({ id }) => id === rule.id) ?? rule;
  return row.overridden?.value ?? row.value;
}
