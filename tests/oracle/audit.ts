/**
 * A whole plan judged from `plan.json` alone: what an outsider with the file and the definition could find. Each part
 * stands in its own file; this one puts them together.
 */
import { auditAgain, comingOf, weekNow } from './audit-again.js';
import { auditCalendar, auditEffort, auditMinutes } from './audit-calendar.js';
import { auditLadders } from './audit-ladders.js';
import { auditRefit } from './audit-refit.js';
import { auditEasier, auditKeys, auditLoads, auditSides } from './audit-sets.js';
import { auditStarts } from './audit-starts.js';
import { auditTests } from './audit-tests.js';
import { auditCapacities, auditWalks } from './audit-walks.js';
import { type PlanJson, planSchema, workOf } from './plan-json.js';

/** Findings in the order of the parts; empty where the plan is as it must be. */
export function auditPlan(plan: unknown): string[] {
  const parsed = planSchema.safeParse(plan);
  if (!parsed.success) return parsed.error.issues.map((issue) => `${issue.path.join('.')}: ${issue.message}`);
  const { data } = parsed;
  const coming = comingOf(data);
  return [
    ...auditWhole(data, coming),
    ...(data.inputs.done === undefined ? auditCalendar(data) : auditAgain(data)),
    ...auditMinutes(data),
    ...auditEffort(coming, data, weekNow(data)),
    ...auditLoads(coming),
    ...auditKeys(data),
    ...auditSides(coming),
    ...auditEasier(coming),
    ...auditWalks(coming),
    ...auditLadders(coming),
    ...auditCapacities(coming),
    ...auditStarts(coming),
    ...auditTests(coming),
    ...auditRefit(coming),
  ];
}

/** Names that must be unique, and nothing planned without the inputs to repeat it. */
function auditWhole(plan: PlanJson, coming: PlanJson): string[] {
  const found: string[] = [];
  const unique = (what: string, names: readonly string[]) => {
    for (const name of new Set(names.filter((one, index) => names.indexOf(one) !== index))) {
      found.push(`${what} ${name} stands twice`);
    }
  };
  unique(
    'kit item',
    plan.inputs.kit.map((item) => item.id),
  );
  unique(
    'rule',
    plan.rules.map((rule) => rule.id),
  );
  unique(
    'strand',
    plan.inputs.strands.map((strand) => strand.id),
  );
  const rules = new Set(plan.rules.map((rule) => rule.id));
  unique(
    'ladder',
    plan.inputs.ladders.map((ladder) => ladder.id),
  );
  for (const { item, session } of workOf(coming)) {
    const isRow = (one: { readonly session: string; readonly row: string }): boolean =>
      one.session === session.id && one.row === item.row;
    const strand = plan.inputs.strands.find(isRow);
    const ladder = plan.inputs.ladders.find(isRow);
    if ((strand === undefined) === (ladder === undefined))
      found.push(`${item.id}: ${strand === undefined ? 'neither' : 'both'} a strand and a ladder to repeat it from`);
    if (strand !== undefined && !strand.versions.some((version) => version.exercise === item.exercise))
      found.push(`${item.id}: ${item.exercise} is not a version of its strand`);
    if (ladder !== undefined && !ladder.rungs.some((rung) => rung.exercise === item.exercise))
      found.push(`${item.id}: ${item.exercise} is on no rung of its ladder`);
    for (const reason of item.reasons) {
      if (rules.size > 0 && reason.source === '' && !rules.has(reason.rule))
        found.push(`${item.id}: reason ${reason.rule} is neither a rule nor has a source`);
    }
  }
  return found;
}
