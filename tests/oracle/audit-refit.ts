/** Rows done in a version they were not written for: plain sets, the week's own effort, and what was really tested. */
import { z } from 'zod';
import { itemsByStrand } from './audit-calendar.js';
import { type PlanItem, type PlanJson, workOf } from './plan-json.js';

const MOST_SETS = 5;
const ruleInForce = z.looseObject({ id: z.string(), overridden: z.looseObject({ value: z.number() }).optional() });
const input = z.looseObject({ name: z.string(), value: z.union([z.string(), z.number()]) });

export function auditRefit(plan: PlanJson): string[] {
  return [...refugeOnce(plan), ...plainSets(plan), ...effortOfTheWeek(plan), ...begunAsTested(plan)];
}

const has = (item: PlanItem, rule: string): boolean => item.reasons.some((reason) => reason.rule === rule);

const inForce = (plan: PlanJson, id: string, value: number): number => {
  const rule = plan.rules.find((one) => one.id === id);
  return rule === undefined ? value : (ruleInForce.parse(rule).overridden?.value ?? value);
};

/** The version a row begins with in another's place; `undefined` where it does what was written for it. */
function chosenOf(item: PlanItem): string | undefined {
  const reason =
    item.reasons.find(({ rule }) => rule === 'begin-tested') ??
    item.reasons.find(({ rule }) => rule === 'version-chosen');
  const named = reason?.inputs.map((one) => input.parse(one)).find(({ name }) => name === 'exercise');
  return named === undefined ? undefined : String(named.value);
}

/** A version in another's place stands in one row of a session only. */
function refugeOnce(plan: PlanJson): string[] {
  const most = inForce(plan, 'refuge-once', 1);
  const sessions = plan.weeks.flatMap((week) => week.sessions);
  return sessions.flatMap((session) => {
    const chosen = workOf(plan).flatMap((one) => (one.session === session ? (chosenOf(one.item) ?? []) : []));
    const often = [...new Set(chosen)].filter((id) => chosen.filter((other) => other === id).length > most);
    return often.map((id) => `${session.id} ${session.date}: ${id} in the place of more than ${most}`);
  });
}

function plainSets(plan: PlanJson): string[] {
  return workOf(plan).flatMap(({ item }) => {
    if (!has(item, 'dose-of-version')) return [];
    const found: string[] = [];
    const { unit, sets } = item.asked;
    const most = inForce(plan, 'dose-of-version', MOST_SETS);
    if (sets > most) found.push(`${item.id}: ${sets} plain sets, above ${most}`);
    if (item.sets.some((set) => set.steps !== undefined)) found.push(`${item.id}: plain sets that go by steps`);
    const must = item.way === 'hold' || item.way === 'carry' ? 'seconds' : 'reps';
    if (unit !== must) found.push(`${item.id}: ${item.way} in plain sets of ${unit}`);
    return found;
  });
}

/** What was written for another way of working is not kept: the curve, or where nothing is counted, nothing. */
function effortOfTheWeek(plan: PlanJson): string[] {
  const onLadder = workOf(plan).flatMap(({ item }) =>
    has(item, 'effort-of-version') && item.capacity === null && item.rung !== undefined && item.asked.reserve !== null
      ? [`${item.id}: a reserve of another way of working on a ladder`]
      : [],
  );
  const walked = itemsByStrand(plan).flatMap(({ strand, items }) =>
    items.flatMap(({ item }, index) => {
      const one = strand.occurrences[index];
      if (one === undefined || !has(item, 'effort-of-version')) return [];
      const week = Math.max(plan.inputs.curve[one.week - 1]?.reserve ?? 0, one.floor);
      const hurried = item.reasons.some(({ rule }) => rule === 'circuit-reserve') ? 10 : 0;
      return one.asked === week + hurried
        ? []
        : [`${item.id}: asks ${one.asked}, though the week asks ${week + hurried}`];
    }),
  );
  return [...onLadder, ...walked];
}

/** Begun with because it was tested: so a test of it stands in the file, and there is no feeler set before it is too old. */
function begunAsTested(plan: PlanJson): string[] {
  return workOf(plan).flatMap(({ item }) => {
    const reason = item.reasons.find(({ rule }) => rule === 'begin-tested');
    if (reason === undefined) return [];
    const inputs = reason.inputs.map((one) => input.parse(one));
    const named = (name: string) => inputs.find((one) => one.name === name)?.value;
    const tested = plan.inputs.capacities.map(({ exercise }) => exercise);
    const found: string[] = [];
    if (!tested.some((id) => id === named('exercise')))
      found.push(`${item.id}: begins with ${named('exercise')}, which was not tested either`);
    if (tested.some((id) => id === named('programme')))
      found.push(`${item.id}: passes over ${named('programme')}, which was tested`);
    return found;
  });
}
