/**
 * What is worth telling the coach of a block as a whole: sets by week and muscle against published least doses, push
 * against pull, squat against hinge, side against side. Read from a plan and the exercises it names, nothing else, so
 * that it holds for a draft and for an edition alike. It stops nothing and changes nothing.
 */
import type { Exercise, Pattern } from '../../model/exercise.js';
import { compareIds } from '../../model/identity.js';
import type { Finding, Plan } from '../../model/plan.js';
import type { ReasonInput, Rule } from '../../model/reason.js';
import type { WeeklySets } from '../../model/weekly-sets.js';
import { reasonOf } from '../reason-of.js';
import { AUDIT_PUSH_PULL } from '../rules/audit-push-pull.js';
import { AUDIT_SIDE_SIDE } from '../rules/audit-side-side.js';
import { AUDIT_SQUAT_HINGE } from '../rules/audit-squat-hinge.js';
import { AUDIT_UNKNOWN_MUSCLE } from '../rules/audit-unknown-muscle.js';
import { AUDIT_WEEKLY_SETS } from '../rules/audit-weekly-sets.js';
import { auditDays } from './audit-days.js';
import { countIn, countOf } from './count-sets.js';
import { muscleOf } from './muscle-groups.js';
import { valueIn } from './value-in-plan.js';
import { isWhole } from './whole-weeks.js';
import { type WorkedSession, workingSets } from './working-sets.js';

/** `exercises` by id, former ids included. In the order below; each finding once, with the weeks it holds in. */
export function auditPlan(plan: Plan, exercises: ReadonlyMap<string, Exercise>): readonly Finding[] {
  const sessions = workingSets(plan, exercises);
  const count = countOf(plan);
  const sets = countIn(plan, sessions, count);
  return [
    ...tooFewSets(plan, sets),
    ...auditDays(plan, sessions, count),
    ...outOfBalance(plan, sets, AUDIT_PUSH_PULL, ['push'], ['pull']),
    ...outOfBalance(plan, sets, AUDIT_SQUAT_HINGE, ['squat', 'lunge'], ['hinge']),
    ...sideAhead(plan, sessions),
    ...unknownMuscles(plan, sessions),
  ];
}

const finding = (rule: Rule, weeks: readonly number[], inputs: readonly ReasonInput[]): Finding => ({
  rule: rule.id,
  audience: 'coach',
  weeks,
  reason: reasonOf(rule, 'coach', inputs, 'measured'),
});

/** An easy week has fewer sets on purpose, and one that is cut off has fewer sessions. */
const workWeeks = (plan: Plan): readonly { readonly index: number; readonly number: number }[] =>
  plan.weeks.flatMap((week, index) => (week.deload || !isWhole(plan, week) ? [] : [{ index, number: week.number }]));

/** Groups short in the same weeks are told together, each with the fewest sets it has in them. */
function tooFewSets(plan: Plan, sets: WeeklySets): readonly Finding[] {
  const least = valueIn(plan, AUDIT_WEEKLY_SETS);
  const short = new Map<string, { weeks: readonly number[]; inputs: ReasonInput[] }>();
  for (const { group, weeks } of sets.groups) {
    const below = workWeeks(plan).filter(({ index }) => (weeks[index] ?? 0) < 10 * least);
    if (below.length === 0) continue;
    const numbers = below.map(({ number }) => number);
    const told = short.get(numbers.join()) ?? { weeks: numbers, inputs: [] };
    const fewest = Math.min(...below.map(({ index }) => weeks[index] ?? 0));
    told.inputs.push(
      { name: 'group', value: group, unit: '' },
      { name: `sets for ${group}`, value: fewest, unit: 'tenths' },
    );
    short.set(numbers.join(), told);
  }
  const value: ReasonInput = { name: 'value', value: least, unit: 'sets' };
  return [...short.values()].map(({ weeks, inputs }) => finding(AUDIT_WEEKLY_SETS, weeks, [value, ...inputs]));
}

/** Where there is none of one, any of the other is too much. The figures told are those of the first such week. */
function outOfBalance(
  plan: Plan,
  sets: WeeklySets,
  rule: Rule,
  one: readonly Pattern[],
  other: readonly Pattern[],
): readonly Finding[] {
  const bound = valueIn(plan, rule);
  const sum = (of: readonly Pattern[], index: number): number =>
    sets.patterns.reduce((all, { pattern, weeks }) => all + (of.includes(pattern) ? (weeks[index] ?? 0) : 0), 0);
  const off = workWeeks(plan).filter(({ index }) => {
    const [a, b] = [sum(one, index), sum(other, index)];
    return 1000 * a > bound * b || 1000 * b > bound * a;
  });
  const first = off[0];
  if (first === undefined) return [];
  const inputs: readonly ReasonInput[] = [
    { name: 'value', value: bound, unit: 'per-mille' },
    { name: 'week', value: first.number, unit: '' },
    { name: one[0] ?? '', value: sum(one, first.index), unit: 'tenths' },
    { name: other[0] ?? '', value: sum(other, first.index), unit: 'tenths' },
  ];
  const weeks = off.map(({ number }) => number);
  return [finding(rule, weeks, inputs)];
}

/** Work of one side only, by exercise: the same for both in every week, unless the coach allows more. */
function sideAhead(plan: Plan, sessions: readonly WorkedSession[]): readonly Finding[] {
  const most = valueIn(plan, AUDIT_SIDE_SIDE);
  const ahead = new Map<string, Map<number, number>>();
  for (const { week, worked } of sessions) {
    for (const { exercise, left, right } of worked) {
      const weeks = ahead.get(exercise.id) ?? new Map<number, number>();
      weeks.set(week, (weeks.get(week) ?? 0) + left - right);
      ahead.set(exercise.id, weeks);
    }
  }
  return [...ahead].flatMap(([id, weeks]): readonly Finding[] => {
    const off = [...weeks].filter(([, by]) => Math.abs(by) > most);
    const first = off[0];
    if (first === undefined) return [];
    const numbers = off.map(([week]) => plan.weeks[week]?.number ?? 0).sort((a, b) => a - b);
    return [
      finding(AUDIT_SIDE_SIDE, numbers, [
        { name: 'exercise', value: id, unit: '' },
        { name: 'side', value: first[1] > 0 ? 'left' : 'right', unit: '' },
        { name: 'sets', value: Math.max(...off.map(([, by]) => Math.abs(by))), unit: 'sets' },
      ]),
    ];
  });
}

function unknownMuscles(plan: Plan, sessions: readonly WorkedSession[]): readonly Finding[] {
  const worked = new Map(sessions.flatMap((session) => session.worked.map(({ exercise }) => [exercise.id, exercise])));
  const unknown = [...worked.values()]
    .sort((a, b) => compareIds(a.id, b.id))
    .flatMap(({ id, facts }) => {
      const names = [...facts.muscles.main, ...facts.muscles.assisting].filter((each) => muscleOf(each) === undefined);
      return names.length === 0 ? [] : [{ id, names }];
    });
  if (unknown.length <= valueIn(plan, AUDIT_UNKNOWN_MUSCLE)) return [];
  const muscles = [...new Set(unknown.flatMap(({ names }) => names))];
  const inputs = [
    ...unknown.map(({ id }) => ({ name: 'exercise', value: id, unit: '' })),
    ...muscles.map((value) => ({ name: 'muscle', value, unit: '' })),
  ];
  return [finding(AUDIT_UNKNOWN_MUSCLE, [], inputs)];
}
