/** What a rule says in a plan: the coach's own value, else as the plan quotes it, else the rulebook's. */
import type { Plan } from '../model/plan.js';
import type { Rule } from '../model/reason.js';

/** An edition of before it quoted a rule holds on with the rulebook's. */
export function valueInForce({ rules }: Pick<Plan, 'rules'>, rule: Rule): number {
  const quoted = rules.find(({ id }) => id === rule.id) ?? rule;
  return quoted.overridden?.value ?? quoted.value;
}
